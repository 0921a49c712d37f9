package holloway.view;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Differences in words. */
class TwoWaysTest {
  private static String minutes(double by) {
    return TwoWays.more(by, m -> Math.round(m) + " min");
  }

  @Test
  void moreHasAPlusAndLessAMinus() {
    assertEquals("+3 min", minutes(3));
    assertEquals("\u22123 min", minutes(-3));
    assertEquals("the same", minutes(0));
  }

  /** A fifth of a minute is no minute, and yet not nothing. */
  @Test
  void whatIsNothingOnceRoundedIsNotAMinusNought() {
    assertEquals("about the same", minutes(-0.2));
    assertEquals("about the same", minutes(0.2));
  }
}
