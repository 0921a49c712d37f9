package holloway.support;

import java.util.stream.IntStream;

/** Sets of works as ascending arrays. */
final class WorkSets {
  private WorkSets() {}

  static int[] union(int[] a, int[] b) {
    return b.length == 0
        ? a
        : IntStream.concat(IntStream.of(a), IntStream.of(b)).sorted().distinct().toArray();
  }

  static boolean has(int[] set, int work) {
    return java.util.Arrays.binarySearch(set, work) >= 0;
  }

  static long price(int[] set, long[] prices) {
    return missing(new int[0], set, prices);
  }

  /** What it costs who has {@code open} to have {@code wanted} as well. */
  static long missing(int[] open, int[] wanted, long[] prices) {
    long sum = 0;
    int i = 0;
    for (int w : wanted) {
      while (i < open.length && open[i] < w) {
        i++;
      }
      if (i == open.length || open[i] != w) {
        sum = Math.min(SingleRunNet.NONE, sum + prices[w]);
      }
    }
    return sum;
  }
}
