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
    long[] sorted = sorted(value);
    for (int n = mostBrokenOf(sorted); n > 0; n = mostBrokenOf(sorted)) {
      shave(value, n, excess(sorted, n));
      changed = true;
      sorted = sorted(value);
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

  /** The n whose limit is broken most per cable, or 0 if all hold. */
  int mostBroken(long[] value) {
    return mostBrokenOf(sorted(value));
  }

  private int mostBrokenOf(long[] sorted) {
    int worst = 0;
    double most = 0;
    long sum = 0;
    for (int n = 1; n <= limit.length && n <= sorted.length; n++) {
      sum = Math.addExact(sum, sorted[sorted.length - n]);
      double over = (sum - limit[n - 1]) / (double) n;
      if (over > most) {
        most = over;
        worst = n;
      }
    }
    return worst;
  }

  private long excess(long[] sorted, int n) {
    long sum = -limit[n - 1];
    for (int i = 1; i <= n; i++) {
      sum += sorted[sorted.length - i];
    }
    return sum;
  }

  private long[] sorted(long[] value) {
    long[] out = new long[cables];
    int at = 0;
    for (int g = 0; g < size.length; g++) {
      for (int i = 0; i < size[g]; i++) {
        out[at++] = value[g];
      }
    }
    Arrays.sort(out);
    return out;
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
