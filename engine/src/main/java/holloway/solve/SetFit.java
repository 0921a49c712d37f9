package holloway.solve;

import holloway.catalog.Cable;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * {@link holloway.catalog.Fit} for sets that are counts by kind, asked for so often that no list of
 * cables is made: the same sums of the same numbers in the same order, so the same answers.
 */
final class SetFit {
  private final double[] head;
  private final double[] outside;

  /** Kinds, thinnest first: the order in which areas are summed. */
  private final int[] byOutside;

  private final int[] widestHeadFirst;

  SetFit(List<Cable> kinds) {
    head = kinds.stream().mapToDouble(c -> c.pullHead().toMm()).toArray();
    outside = kinds.stream().mapToDouble(c -> c.outside().toMm()).toArray();
    byOutside = order(kinds.size(), Comparator.comparing(k -> outside[k]));
    widestHeadFirst =
        order(
            kinds.size(),
            Comparator.<Integer, Double>comparing(k -> head[k])
                .reversed()
                .thenComparing(k -> kinds.get(k).kind()));
  }

  private static int[] order(int n, Comparator<Integer> by) {
    return IntStream.range(0, n).boxed().sorted(by).mapToInt(Integer::intValue).toArray();
  }

  boolean fits(int[] counts, double diameterMm) {
    double hole = diameterMm * diameterMm;
    double total = 0;
    double largest = 0;
    double second = 0;
    int n = 0;
    for (int k : byOutside) {
      double area = outside[k] * outside[k];
      for (int i = 0; i < counts[k]; i++) {
        total += area;
        second = largest;
        largest = area;
        n++;
      }
    }
    return n == 0
        || largest <= 0.53 * hole
            && (n < 2 || largest + second <= 0.31 * hole)
            && (n < 3 || total <= 0.40 * hole)
            && headsPass(counts, diameterMm, total);
  }

  private boolean headsPass(int[] counts, double diameterMm, double total) {
    double widest = 0;
    for (int k : widestHeadFirst) {
      double others = total - outside[k] * outside[k];
      if (counts[k] > 0
          && (head[k] > diameterMm
              || head[k] * head[k] + others > 0.80 * (diameterMm * diameterMm))) {
        return false;
      }
      for (int i = 0; i < Math.min(2, counts[k]); i++) {
        if (head[k] + widest > diameterMm) {
          return false;
        }
        widest = Math.max(widest, outside[k]);
      }
    }
    return true;
  }
}
