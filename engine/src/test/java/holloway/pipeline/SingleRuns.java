package holloway.pipeline;

import holloway.request.Profile;
import holloway.request.Request;
import holloway.routing.RouteGraph;
import holloway.solve.Budget;
import holloway.solve.JointPlanner;
import holloway.solve.Order;
import holloway.solve.Progress;
import holloway.support.ExactSingleRun;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** The runs of a house one at a time, least work, by the planner and by the exact method. */
final class SingleRuns {
  private SingleRuns() {}

  /** Runs that are different problems: two cables of one kind between the same ends are one. */
  static List<Order.Wanted> of(Request request) {
    Map<String, Order.Wanted> out = new LinkedHashMap<>();
    for (Order.Wanted w : RealSite.order(request).runs()) {
      out.putIfAbsent(w.from() + "|" + w.to() + "|" + w.cable().kind(), w);
    }
    return List.copyOf(out.values());
  }

  /** What the wishes ban, as the pipeline hands it to the planner. */
  static Set<String> bans(Request request) {
    return new TreeSet<>(RealSite.order(request).bans());
  }

  static ExactSingleRun.Best exact(RouteGraph g, Order.Wanted w, Set<String> bans) {
    return ExactSingleRun.of(g, w.from(), w.to(), w.cable(), bans);
  }

  /** The planner's price of this run alone, or the exact method's "none" if it finds no route. */
  static long planned(RouteGraph g, Order.Wanted w, Set<String> bans) {
    Order order = new Order(List.of(w), Profile.LEAST_WORK, bans, Map.of());
    var plan = JointPlanner.solve(g, order, Budget.QUICK, Progress.SILENT).plan();
    return plan.unrouted().isEmpty() ? plan.totals().objective() : ExactSingleRun.NO_ROUTE;
  }
}
