package holloway.gl;

import org.junit.jupiter.api.Assumptions;

/** Opens what draws, or skips the test with a line where nothing can. */
public final class Driver {
  /** Set where pictures have to be tested: a missing driver is then a failure. */
  static final String MUST = "HOLLOWAY_PICTURES_MUST";

  private Driver() {}

  public static Offscreen orSkip() {
    try {
      return Offscreen.open();
    } catch (NoDisplay e) {
      String must = System.getenv(MUST);
      if (must != null && !must.isEmpty()) {
        throw new AssertionError(MUST + " is set, and: " + e.getMessage(), e);
      }
      System.err.println("pictures are not tested here: " + e.getMessage());
      Assumptions.abort("pictures are not tested here: " + e.getMessage());
      throw e;
    }
  }
}
