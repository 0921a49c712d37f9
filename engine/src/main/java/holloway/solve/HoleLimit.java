package holloway.solve;

import java.util.Arrays;

/**
 * The limit of a hole's own work: the n largest shares of single cables are at most the hole's
 * price with n cables, which never falls as n grows. No more than the last n ever meet there, so
 * nothing limits more of them. For one thread.
 */
final class HoleLimit {
  private final long[] limit;
  private final int[] size;
  private long rent;
  private final int cables;
  private final long least;

  /** By n−1: the most cables that cost no more than n. */
  private final int[] sameTo;

  private final long[] sorted;
  private final int[] sizeOf;
  private final long[] scratch;

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
    sameTo = new int[limit.length];
    for (int n = limit.length - 1; n >= 0; n--) {
      boolean same = n + 1 < limit.length && limit[n + 1] == limit[n];
      sameTo[n] = same ? sameTo[n + 1] : n + 1;
    }
    sorted = new long[size.length];
    sizeOf = new int[size.length];
    scratch = new long[size.length];
  }

  /** An array of a share for each group, all nothing, which the next call takes back. */
  long[] scratch() {
    Arrays.fill(scratch, 0);
    return scratch;
  }

  /** From now on every limit is so much higher, because the bound pays it back. */
  void rent(long units) {
    rent = units;
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
    int shares = largestFirst(value);
    for (int n = mostBroken(shares); n > 0; n = mostBroken(shares)) {
      shave(value, shares, n, excess(shares, n));
      changed = true;
      shares = largestFirst(value);
    }
    return changed;
  }

  /** All shares together are within the least limit: most holes most of the time. */
  private boolean surelyHolds(long[] value) {
    long sum = 0;
    for (int g = 0; g < size.length; g++) {
      if (value[g] < 0 || value[g] > least + rent) {
        return false;
      }
      sum += size[g] * value[g];
    }
    return sum <= least + rent;
  }

  /**
   * The n whose limit is broken most per cable, or 0 if all hold. Cables of one group come next to
   * one another; where the limit stays the same meanwhile, what is too much for each grows or falls
   * all the way, so that only the first and the last of them need a look.
   */
  int mostBroken(long[] value) {
    return mostBroken(largestFirst(value));
  }

  private int mostBroken(int shares) {
    int worst = 0;
    double most = 0;
    long sum = 0;
    int n = 0;
    for (int i = 0; i < shares && n < limit.length; i++) {
      long value = sorted[i];
      int cables = sizeOf[i];
      int last = Math.min(n + cables, limit.length);
      for (int at = n + 1; at <= last; at = Math.max(at + 1, Math.min(last, sameTo[at - 1]))) {
        long total = Math.addExact(sum, Math.multiplyExact((long) at - n, value));
        double over = (total - limit[at - 1] - rent) / (double) at;
        if (over > most) {
          most = over;
          worst = at;
        }
      }
      sum = Math.addExact(sum, Math.multiplyExact((long) cables, value));
      n += cables;
    }
    return worst;
  }

  private long excess(int shares, int n) {
    long sum = -limit[n - 1] - rent;
    int left = n;
    for (int i = 0; i < shares && left > 0; i++) {
      int some = Math.min(left, sizeOf[i]);
      sum += some * sorted[i];
      left -= some;
    }
    return sum;
  }

  /**
   * Sorts the groups that share anything, one put in after the other, for there are few; how many
   * they are. Those with nothing break no limit, for it never falls.
   */
  private int largestFirst(long[] value) {
    int count = 0;
    for (int g = 0; g < value.length; g++) {
      if (value[g] > 0) {
        int at = count++;
        for (; at > 0 && sorted[at - 1] < value[g]; at--) {
          sorted[at] = sorted[at - 1];
          sizeOf[at] = sizeOf[at - 1];
        }
        sorted[at] = value[g];
        sizeOf[at] = size[g];
      }
    }
    return count;
  }

  /**
   * Takes the same from each of the n largest; those about as large as the n-th share its part, so
   * that equal shares stay equal.
   */
  private void shave(long[] value, int shares, int n, long excess) {
    long each = (excess + n - 1) / n;
    long low = level(shares, each, excess);
    for (int g = 0; g < value.length; g++) {
      value[g] -= Math.max(0, Math.min(each, value[g] - low));
    }
  }

  /**
   * The highest level above which {@code excess} can be taken, at most {@code each} a cable: going
   * down, cables begin to give at their share and have given all at {@code each} below it.
   */
  private long level(int shares, long each, long excess) {
    long at = sorted[0];
    long taken = 0;
    long giving = 0;
    int begun = 0;
    int done = 0;
    while (at > 0) {
      while (begun < shares && sorted[begun] == at) {
        giving += sizeOf[begun++];
      }
      while (done < begun && sorted[done] - each == at) {
        giving -= sizeOf[done++];
      }
      long next = begun < shares ? sorted[begun] : 0;
      next = done < begun ? Math.max(next, sorted[done] - each) : next;
      next = Math.max(0, next);
      if (taken + giving * (at - next) >= excess) {
        return at - (excess - taken + giving - 1) / giving;
      }
      taken += giving * (at - next);
      at = next;
    }
    return 0;
  }
}
