package holloway.hollow;

/** The stable part of ids: a distance to 10 mm. */
public final class Tags {
  private Tags() {}

  public static String of(long nm) {
    return String.valueOf(Math.round(nm / 10_000_000.0) * 10);
  }
}
