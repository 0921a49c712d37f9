package holloway.catalog;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;

/**
 * Which sets of cables a bored hole takes: 53 % of its area for one, 31 % for two, 40 % for three
 * or more (trade-facts A6-1, used as practice, E6), made monotone: a set fits only if every smaller
 * set of it fits. The widest pull head must pass when all the others already lie there, and no head
 * is wider than what the widest jacket beside it leaves: widest heads are pulled first.
 */
public final class Fit {
  /** Bit diameters offered, millimetres. */
  public static final List<Integer> BITS_MM = List.of(13, 16, 19, 22, 25, 32, 38, 51);

  /** Those of them that flexible-shaft bits are made in: 1/2, 3/4 and 1 in (E1). */
  public static final List<Integer> FLEXIBLE_MM = List.of(13, 19, 25);

  private Fit() {}

  public static boolean fits(Collection<Cable> cables, double diameterMm) {
    double hole = diameterMm * diameterMm;
    double[] areas =
        cables.stream().mapToDouble(c -> square(c.outside().toMm())).sorted().toArray();
    int n = areas.length;
    if (n == 0) {
      return true;
    }
    double total = 0;
    for (double a : areas) {
      total += a;
    }
    boolean one = areas[n - 1] <= 0.53 * hole;
    boolean two = n < 2 || areas[n - 1] + areas[n - 2] <= 0.31 * hole;
    boolean many = n < 3 || total <= 0.40 * hole;
    return one && two && many && headPasses(cables, diameterMm, total);
  }

  /** Whoever is pulled last has the widest head; the others leave it the rest of the bore. */
  private static boolean headPasses(
      Collection<Cable> cables, double diameterMm, double totalSquares) {
    for (Cable c : cables) {
      double head = square(c.pullHead().toMm());
      double others = totalSquares - square(c.outside().toMm());
      if (c.pullHead().toMm() > diameterMm || head + others > 0.80 * square(diameterMm)) {
        return false;
      }
    }
    return headsPassBesideJackets(cables, diameterMm);
  }

  /** Two round things pass side by side when their diameters add up to the bore's at most. */
  private static boolean headsPassBesideJackets(Collection<Cable> cables, double diameterMm) {
    List<Cable> widestFirst =
        cables.stream()
            .sorted(Comparator.comparing(Cable::pullHead).reversed().thenComparing(Cable::kind))
            .toList();
    double widest = 0;
    for (Cable c : widestFirst) {
      if (c.pullHead().toMm() + widest > diameterMm) {
        return false;
      }
      widest = Math.max(widest, c.outside().toMm());
    }
    return true;
  }

  /** The smallest bit of the ladder, at most {@code mostMm}, that takes the set. */
  public static OptionalInt smallestBit(Collection<Cable> cables, double mostMm) {
    return BITS_MM.stream()
        .mapToInt(Integer::intValue)
        .filter(d -> d <= mostMm && fits(cables, d))
        .findFirst();
  }

  private static double square(double v) {
    return v * v;
  }
}
