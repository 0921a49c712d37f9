package holloway.pipeline;

import holloway.geometry.Point3;
import holloway.plan.Plan;
import holloway.routing.Ends;
import holloway.routing.RouteGraph;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Which spot a plan chose for each end that has alternatives. */
final class Chosen {
  private Chosen() {}

  /** Index of the spot by end name; ends with one spot or no run are left out. */
  static Map<String, Integer> spots(Ends ends, RouteGraph graph, Plan plan) {
    Map<String, Integer> out = new TreeMap<>();
    ends.spots()
        .forEach(
            (name, spots) -> {
              if (spots.size() > 1) {
                Optional<Point3> at = end(plan, name);
                List<Integer> nodes = graph.terminals().get(name);
                for (int k = 0; at.isPresent() && k < nodes.size(); k++) {
                  if (graph.nodes().get(nodes.get(k)).at().equals(at.get())) {
                    out.putIfAbsent(name, k);
                  }
                }
              }
            });
    return out;
  }

  private static Optional<Point3> end(Plan plan, String name) {
    for (Plan.PlannedRun r : plan.runs()) {
      if (!r.steps().isEmpty() && r.to().equals(name)) {
        List<Point3> path = r.steps().get(r.steps().size() - 1).path();
        return Optional.of(path.get(path.size() - 1));
      }
      if (!r.steps().isEmpty() && r.from().equals(name)) {
        return Optional.of(r.steps().get(0).path().get(0));
      }
    }
    return Optional.empty();
  }

  /**
   * The second plan with the better of both bounds that holds for it: that of the wider problem.
   */
  static Plan withBound(Plan second, Plan first) {
    Plan.Totals t = second.totals();
    long bound = Math.min(t.objective(), sameRuns(second, first) ? first.totals().bound() : 0);
    double gap = t.objective() == 0 ? 0 : (t.objective() - bound) / (double) t.objective();
    return second.withRuns(
        second.runs(),
        new Plan.Totals(
            t.objective(),
            bound,
            gap,
            t.minutes(),
            t.holes(),
            t.patches(),
            t.routeM(),
            t.cableM(),
            t.visibleM(),
            t.money(),
            t.currency(),
            t.zones(),
            t.cutByTime() || first.totals().cutByTime()));
  }

  /** A bound over other runs says nothing of a plan. */
  static boolean sameRuns(Plan second, Plan first) {
    return second.runs().stream()
        .map(Plan.PlannedRun::id)
        .toList()
        .equals(first.runs().stream().map(Plan.PlannedRun::id).toList());
  }
}
