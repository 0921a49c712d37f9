package holloway.check;

import holloway.catalog.Cable;
import java.util.Comparator;
import java.util.List;

/**
 * Whether cables go through round bores: 53 % of the area for one, 31 % for two, 40 % for three or
 * more (trade-facts A6-1; E6: practice, not law, for data cable), for the set and every smaller set
 * of it; and whether the pull heads pass beside what already lies there, widest first.
 */
final class BoreFill {
  private BoreFill() {}

  static boolean fits(List<Cable> cables, double diameterMm, int bores) {
    return bores <= 1 ? fitsOne(cables, diameterMm) : splits(cables, 0, 0, diameterMm);
  }

  /** Two bores: some way to share the cables between them fits. */
  private static boolean splits(List<Cable> cables, int index, long chosen, double diameterMm) {
    if (index < cables.size()) {
      return splits(cables, index + 1, chosen, diameterMm)
          || splits(cables, index + 1, chosen | 1L << index, diameterMm);
    }
    return fitsOne(pick(cables, chosen, true), diameterMm)
        && fitsOne(pick(cables, chosen, false), diameterMm);
  }

  private static List<Cable> pick(List<Cable> cables, long chosen, boolean in) {
    java.util.ArrayList<Cable> out = new java.util.ArrayList<>();
    for (int i = 0; i < cables.size(); i++) {
      if ((chosen >> i & 1) == 1 == in) {
        out.add(cables.get(i));
      }
    }
    return out;
  }

  /** Of all sets of one size the one of the fattest cables fills most, so it speaks for them. */
  private static boolean fitsOne(List<Cable> cables, double diameterMm) {
    List<Double> fattest =
        cables.stream()
            .map(c -> area(c.outside().toMm()))
            .sorted(Comparator.reverseOrder())
            .toList();
    double sum = 0;
    for (int n = 1; n <= fattest.size(); n++) {
      sum += fattest.get(n - 1);
      double limit = n == 1 ? 0.53 : n == 2 ? 0.31 : 0.40;
      if (sum > limit * area(diameterMm) + 1e-9) {
        return false;
      }
    }
    return headsPass(cables, diameterMm);
  }

  /** Two circles pass side by side when their diameters add up to the bore's at most. */
  private static boolean headsPass(List<Cable> cables, double diameterMm) {
    List<Cable> widestFirst =
        cables.stream()
            .sorted(Comparator.comparing(Cable::pullHead).reversed().thenComparing(Cable::kind))
            .toList();
    double widestJacket = 0;
    for (Cable c : widestFirst) {
      if (c.pullHead().toMm() + widestJacket > diameterMm + 1e-9) {
        return false;
      }
      widestJacket = Math.max(widestJacket, c.outside().toMm());
    }
    return true;
  }

  private static double area(double diameter) {
    return Math.PI / 4 * diameter * diameter;
  }
}
