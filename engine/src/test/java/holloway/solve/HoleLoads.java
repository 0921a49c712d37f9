package holloway.solve;

import holloway.catalog.Cable;
import holloway.catalog.Fit;
import holloway.request.Profile;
import holloway.routing.RouteGraph;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What a hole costs beyond its method for so many cables of each kind, by trying all splits. */
final class HoleLoads {
  static final long NONE = BruteForce.NONE;

  /**
   * @param counts by kind
   * @param extra units, {@link #NONE} where they do not fit
   */
  record Load(int[] counts, long extra) {}

  private final List<Cable> kinds;
  private final long secondHole;

  HoleLoads(List<Cable> kinds, Profile profile) {
    this.kinds = kinds;
    secondHole = profile == Profile.FEWEST_HOLES ? 10_000_000_000L : 0;
  }

  /** Every load that fits a hole bored so, up to so many of each kind. */
  List<Load> of(RouteGraph.Hole h, boolean flexible, int[] most) {
    List<RouteGraph.Step> steps = BruteForce.steps(h, flexible);
    List<Load> out = new ArrayList<>();
    for (int[] counts : under(most)) {
      long extra = extra(h, steps, counts);
      if (extra < NONE) {
        out.add(new Load(counts, extra));
      }
    }
    return out;
  }

  private static List<int[]> under(int[] most) {
    List<int[]> out = new ArrayList<>();
    out.add(new int[most.length]);
    for (int k = 0; k < most.length; k++) {
      for (int[] c : List.copyOf(out)) {
        for (int n = 1; n <= most[k]; n++) {
          int[] more = c.clone();
          more[k] = n;
          out.add(more);
        }
      }
    }
    return out;
  }

  private long extra(RouteGraph.Hole h, List<RouteGraph.Step> steps, int[] counts) {
    if (Arrays.stream(counts).sum() == 0) {
      return 0;
    }
    long one = step(h, steps, counts);
    if (one < NONE || h.second().isEmpty()) {
      return one;
    }
    long least = NONE;
    for (int[] left : under(counts)) {
      int[] right = counts.clone();
      for (int k = 0; k < right.length; k++) {
        right[k] -= left[k];
      }
      long both = step(h, steps, left) + step(h, steps, right);
      least = both >= NONE ? least : Math.min(least, both + h.second().getAsLong() + secondHole);
    }
    return least;
  }

  private long step(RouteGraph.Hole h, List<RouteGraph.Step> steps, int[] counts) {
    List<Cable> cables = new ArrayList<>();
    for (int k = 0; k < counts.length; k++) {
      for (int i = 0; i < counts[k]; i++) {
        cables.add(kinds.get(k));
      }
    }
    return h.steps().isEmpty()
        ? 0
        : steps.stream()
            .filter(s -> Fit.fits(cables, s.diameterMm()))
            .mapToLong(RouteGraph.Step::extra)
            .findFirst()
            .orElse(NONE);
  }
}
