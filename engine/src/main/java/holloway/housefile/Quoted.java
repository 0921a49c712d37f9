package holloway.housefile;

/** Names as they are written in a house file. */
public final class Quoted {
  private Quoted() {}

  /** Plain when it is only letters, digits and blanks and begins with a letter. */
  public static String name(String name) {
    return name.matches("[A-Za-z][A-Za-z0-9 ]*") && Forms.yesNo(name).isEmpty() && !isNothing(name)
        ? name
        : "'" + name.replace("'", "''") + "'";
  }

  private static boolean isNothing(String name) {
    return name.equalsIgnoreCase("null");
  }

  /**
   * @throws IllegalArgumentException with a message for a person when the name cannot be a name
   */
  public static void check(String name) {
    try {
      Forms.name(name);
    } catch (Refused e) {
      throw new IllegalArgumentException(e.getMessage(), e);
    }
  }
}
