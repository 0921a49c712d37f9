package holloway.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** How long the proof may look, in sight. */
final class BoundTreeTest {
  @Test
  void aLargeHouseHasAThirdOfTheLooksASmallOneAQuarter() {
    // 600 / 4 + 60 * 0.1 = 156
    assertEquals(156_000_000, BoundTree.most(600_000_000, 100_000));
    // 600 / 4 + 60 * 2 = 270, and no more than 600 / 3 = 200
    assertEquals(200_000_000, BoundTree.most(600_000_000, 2_000_000));
    // 50 * 6 = 300: the whole house fifty times
    assertEquals(300_000_000, BoundTree.most(600_000_000, 6_000_000));
    // and never more than there are
    assertEquals(600_000_000, BoundTree.most(600_000_000, 20_000_000));
  }
}
