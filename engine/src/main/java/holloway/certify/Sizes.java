package holloway.certify;

import holloway.catalog.Fit;
import holloway.routing.RouteGraph;
import java.util.Arrays;
import java.util.List;

/**
 * What a hole can be bored to by some of its methods: a flexible bit is not made in every size.
 *
 * @param steps smallest first; none where a hole is there already and has no limit
 */
record Sizes(RouteGraph.Hole hole, List<RouteGraph.Step> steps) {
  /** By whichever method. */
  static Sizes ofAny(RouteGraph.Hole hole) {
    return new Sizes(hole, hole.steps());
  }

  /** By those methods that need the work. */
  static Sizes with(RouteGraph.Hole hole, int work) {
    boolean flexible =
        hole.methods().stream()
            .filter(m -> Arrays.stream(m.works()).anyMatch(w -> w == work))
            .allMatch(RouteGraph.Method::flexible);
    return flexible
        ? new Sizes(
            hole,
            hole.steps().stream().filter(s -> Fit.FLEXIBLE_MM.contains(s.diameterMm())).toList())
        : ofAny(hole);
  }
}
