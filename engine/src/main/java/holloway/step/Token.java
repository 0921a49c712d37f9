package holloway.step;

/**
 * @param text what it says: a keyword in capitals, a number as written, a string decoded
 */
record Token(Kind kind, String text, int line, int column) {
  /** What a token can be. */
  enum Kind {
    KEYWORD("a keyword"),
    REF("a reference such as #12"),
    STRING("a string in quotes"),
    ENUMERATION("a word between dots"),
    BINARY("a binary"),
    NUMBER("a number"),
    OPEN("'('"),
    CLOSE("')'"),
    COMMA("','"),
    EQUALS("'='"),
    SEMICOLON("';'"),
    UNSET("'$'"),
    DERIVED("'*'"),
    END("the end of the file");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    String words() {
      return words;
    }
  }

  /** For a message: what stands there, shortened. */
  String shown() {
    return switch (kind) {
      case KEYWORD, NUMBER ->
          "'" + (text.length() <= 40 ? text : text.substring(0, 40) + "...") + "'";
      case REF -> "'#" + text + "'";
      default -> kind.words();
    };
  }
}
