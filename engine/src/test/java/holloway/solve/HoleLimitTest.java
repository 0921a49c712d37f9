package holloway.solve;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Collections;
import java.util.Random;
import java.util.stream.IntStream;
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

  /** Looking at the ends of each group finds what looking at every number of cables finds. */
  @Test
  void groupsAreSeenAsTheirCables() {
    Random random = new Random(20_261_126);
    for (int i = 0; i < 2_000; i++) {
      int[] size = random.ints(1 + random.nextInt(4), 1, 6).toArray();
      long[] value = random.longs(size.length, 0, 60).toArray();
      long[] limit = new long[1 + random.nextInt(14)];
      limit[0] = 20 + random.nextInt(80);
      for (int n = 1; n < limit.length; n++) {
        limit[n] = limit[n - 1] + (random.nextInt(4) == 0 ? random.nextInt(40) : 0);
      }
      int found = new HoleLimit(limit, size).mostBroken(value);
      assertEquals(excess(limit, size, value, found), most(limit, size, value), 1e-9, "case " + i);
    }
  }

  private static double most(long[] limit, int[] size, long[] value) {
    double out = 0;
    for (int n = 1; n <= limit.length; n++) {
      out = Math.max(out, excess(limit, size, value, n));
    }
    return out;
  }

  /** What is too much for each of the n largest cables; nothing for none. */
  private static double excess(long[] limit, int[] size, long[] value, int n) {
    long[] cables =
        IntStream.range(0, size.length)
            .boxed()
            .flatMap(g -> Collections.nCopies(size[g], value[g]).stream())
            .mapToLong(v -> -v)
            .sorted()
            .toArray();
    if (n == 0 || n > cables.length) {
      return 0;
    }
    return (-Arrays.stream(cables, 0, n).sum() - limit[n - 1]) / (double) n;
  }
}
