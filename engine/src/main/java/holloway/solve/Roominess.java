package holloway.solve;

import holloway.catalog.Cable;
import holloway.units.Length;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * How many cables a hole takes, whichever they are, and how many of the thicker ones. A few slim
 * leads among many thick cables fit where three of the thick do not, so each thickness is counted
 * by itself too: class t is all cables but those of the t thinnest jackets of the order.
 */
final class Roominess {
  private final LeastExtra[] least;

  /** By group: how many jackets of the order are thinner than its own. */
  private final int[] thinner;

  /**
   * @param cable by group
   * @param size number of runs in each group
   */
  Roominess(Network net, List<Cable> cable, int[] size) {
    List<Length> jackets = cable.stream().map(Cable::outside).distinct().sorted().toList();
    thinner = cable.stream().mapToInt(c -> jackets.indexOf(c.outside())).toArray();
    least = new LeastExtra[Math.max(1, jackets.size())];
    for (int t = 0; t < least.length; t++) {
      int left = t;
      least[t] =
          new LeastExtra(
              net,
              IntStream.range(0, size.length)
                  .filter(g -> thinner[g] >= left)
                  .boxed()
                  .flatMap(g -> IntStream.range(0, size[g]).mapToObj(i -> cable.get(g)))
                  .toList());
    }
  }

  int classes() {
    return least.length;
  }

  /** What a hole costs beyond its method for 1, 2, ... cables; ends where no more fit. */
  LeastExtra ofAll() {
    return least[0];
  }

  /** True if the cables of the group belong to the class. */
  boolean counts(int without, int group) {
    return thinner[group] >= without;
  }

  /**
   * How many of the class fit a hole, if that is less than what any thinner class is told of it;
   * else −1, and a row would prove nothing.
   */
  int narrower(int without, int hole, boolean flexible) {
    int fit = fit(without, hole, flexible);
    int known = IntStream.range(0, without).map(t -> fit(t, hole, flexible)).min().orElse(0);
    return fit > 0 && fit < Math.min(known, least[without].cables()) ? fit : -1;
  }

  /** How many of the class fit a hole, bored with flexible bits alone or with any it takes. */
  int fit(int without, int hole, boolean flexible) {
    return least[without].of(hole, flexible).length;
  }

  /** The jackets the classes are told apart by, so that one order's may stand for another's. */
  boolean sameClasses(Roominess other) {
    return least.length == other.least.length
        && Arrays.equals(
            Arrays.stream(least).map(LeastExtra::slimmest).toArray(),
            Arrays.stream(other.least).map(LeastExtra::slimmest).toArray());
  }
}
