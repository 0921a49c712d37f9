package holloway.housefile;

/** A text that does not read as what it should be; caught where the line is known. */
final class Refused extends RuntimeException {
  private static final long serialVersionUID = 1L;
  private final String expected;
  private final String nearest;

  Refused(String text, String expected, String nearest) {
    super(text, null, false, false);
    this.expected = expected;
    this.nearest = nearest;
  }

  Refused(String text, String expected) {
    this(text, expected, "");
  }

  String expected() {
    return expected;
  }

  String nearest() {
    return nearest;
  }
}
