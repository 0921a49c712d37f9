package holloway.solve;

import java.util.Arrays;

/**
 * The limit of a hole's own work: the n largest shares of single cables are at most the hole's
 * price with n cables. No more than the last n ever meet there, so nothing limits more of them.
 */
final class HoleLimit {
  private final long[] limit;
  private final int[] size;
  private final int cables;
  private final long least;

  /**
   * @param limit price with 1, 2, … cables
   * @param size how many cables each share stands for
   */
  HoleLimit(long[] limit, int[] size) {
    this.limit = limit;
    this.size = size;
    int sum = 0;
    for (int s : size) {
      sum += s;
    }
    cables = sum;
    least = Arrays.stream(limit).min().orElse(0);
  }

  /** One limit for any number of cables, and none that do not fit together. */
  boolean isFlat() {
    for (long l : limit) {
      if (l != limit[0]) {
        return false;
      }
    }
    return limit.length >= cables && cables > 0;
  }

  /** Lowers shares until the limit holds; true if any was lowered. */
  boolean project(long[] value) {
    boolean changed = false;
    if (limit.length == 0 || surelyHolds(value)) {
      return false;
    }
    int[] order = largestFirst(value);
    for (int n = mostBroken(value, order); n > 0; n = mostBroken(value, order)) {
      shave(value, n, excess(value, order, n));
      changed = true;
      order = largestFirst(value);
    }
    return changed;
  }

  /** All shares together are within the least limit: most holes most of the time. */
  private boolean surelyHolds(long[] value) {
    long sum = 0;
    for (int g = 0; g < size.length; g++) {
      if (value[g] < 0 || value[g] > least) {
        return false;
      }
      sum += size[g] * value[g];
    }
    return sum <= least;
  }

  /**
   * The n whose limit is broken most per cable, or 0 if all hold. Cables of one group come next to
   * one another; where the limit stays the same meanwhile, what is too much for each grows or falls
   * all the way, so that only the first and the last of them need a look.
   */
  int mostBroken(long[] value) {
    return mostBroken(value, largestFirst(value));
  }

  private int mostBroken(long[] value, int[] order) {
    int worst = 0;
    double most = 0;
    long sum = 0;
    int n = 0;
    for (int g : order) {
      int last = Math.min(n + size[g], limit.length);
      boolean same = n < last && limit[n] == limit[last - 1];
      for (int at = n + 1; at <= last; at = same && at < last ? last : at + 1) {
        long total = Math.addExact(sum, Math.multiplyExact((long) at - n, value[g]));
        double over = (total - limit[at - 1]) / (double) at;
        if (over > most) {
          most = over;
          worst = at;
        }
      }
      sum = Math.addExact(sum, Math.multiplyExact((long) size[g], value[g]));
      n += size[g];
    }
    return worst;
  }

  private long excess(long[] value, int[] order, int n) {
    long sum = -limit[n - 1];
    int left = n;
    for (int g : order) {
      int some = Math.min(left, size[g]);
      sum += some * value[g];
      left -= some;
    }
    return sum;
  }

  /** Groups by share; there are few of them, so they are put in one by one. */
  private static int[] largestFirst(long[] value) {
    int[] order = new int[value.length];
    for (int g = 0; g < value.length; g++) {
      int at = g;
      for (; at > 0 && value[order[at - 1]] < value[g]; at--) {
        order[at] = order[at - 1];
      }
      order[at] = g;
    }
    return order;
  }

  /**
   * Takes the same from each of the n largest; those about as large as the n-th share its part, so
   * that equal shares stay equal.
   */
  private void shave(long[] value, int n, long excess) {
    long each = (excess + n - 1) / n;
    long low = 0;
    long high = Arrays.stream(value).max().orElse(0);
    while (low < high) {
      long level = low + (high - low + 1) / 2;
      if (taken(value, level, each) >= excess) {
        low = level;
      } else {
        high = level - 1;
      }
    }
    for (int g = 0; g < value.length; g++) {
      value[g] -= Math.max(0, Math.min(each, value[g] - low));
    }
  }

  private long taken(long[] value, long level, long each) {
    long sum = 0;
    for (int g = 0; g < value.length; g++) {
      sum += size[g] * Math.max(0, Math.min(each, value[g] - level));
    }
    return sum;
  }
}
