package holloway.solve;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** A hole that costs 100 with one or two cables and 130 with three. */
class HoleLimitTest {
  private static final long[] LIMIT = {100, 100, 130};

  @Test
  void theLargestSharesMayBeAsMuchAsThatManyCablesCost() {
    HoleLimit one = new HoleLimit(LIMIT, new int[] {1, 1, 1});
    // 60 + 40 = 100 with two, 130 with all three.
    assertEquals(0, one.mostBroken(new long[] {60, 40, 30}));
    // 60 + 50 is 10 too much for two, 5 each; 145 is 15 too much for three, 5 each: the first is
    // named.
    assertEquals(2, one.mostBroken(new long[] {60, 50, 35}));
  }

  @Test
  void aGroupCountsOncePerCable() {
    // Two cables of 55 each are 110 where two may be 100.
    HoleLimit two = new HoleLimit(LIMIT, new int[] {2});
    long[] value = {55};
    assertTrue(two.project(value));
    assertArrayEquals(new long[] {50}, value);
  }

  @Test
  void itIsFlatOnlyIfNothingButTheSumIsLimited() {
    assertFalse(new HoleLimit(LIMIT, new int[] {1, 1, 1}).isFlat());
    assertTrue(new HoleLimit(new long[] {100, 100, 100}, new int[] {1, 2}).isFlat());
    // Three cables, of which never more than two meet: the two largest are limited, not the sum.
    assertFalse(new HoleLimit(new long[] {100, 100}, new int[] {1, 2}).isFlat());
  }
}
