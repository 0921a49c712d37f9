package holloway.solve;

import holloway.plan.Certificate;
import holloway.routing.RouteGraph;
import java.util.List;
import java.util.TreeMap;

/** The doorway: plans all runs of an order together and proves how good the plan is. */
public final class JointPlanner {
  private JointPlanner() {}

  /**
   * The cheapest plan found, with a proven lower bound for the runs it routes. Runs that cannot be
   * routed are listed in the plan and left out of both figures.
   */
  public static Solved solve(RouteGraph graph, Order order, Budget budget, Progress progress) {
    return solve(graph, order, budget, progress, Stop.NEVER);
  }

  /**
   * As without {@code stop}, and the very same where that ends nothing. Once the plan is proven to
   * be near enough to the least the search ends, the same each time; where time ends it, the answer
   * says so.
   */
  public static Solved solve(
      RouteGraph graph, Order order, Budget budget, Progress progress, Stop stop) {
    FromNothing search = new FromNothing(new Task(graph, order), budget, progress, new Watch(stop));
    FromNothing.Found found = search.found();
    progress.closing(found.best().price(), found.bound().bound());
    return search.answer(found);
  }

  /** The plan, or a cheaper one where all that could be cheaper is few enough to be tried. */
  static Solution finished(Task task, Budget budget, Bound proof, Solution plan, Watch watch) {
    return watch.over()
        ? plan
        : new Finish(task, proof.ground(), budget.finish(), watch).cheapest(plan, proof.proven());
  }

  static Solved answer(Task task, Reach reach, Solution best, Certificate bound, boolean cut) {
    Draft draft = new Draft(task, new Zones(task.net));
    draft.load(best);
    TreeMap<String, List<String>> reached = new TreeMap<>();
    for (int k = 0; k < task.runs(); k++) {
      if (best.paths()[k] == null) {
        reached.put(task.order.runs().get(k).id(), reach.nearest(k));
      }
    }
    return new Solved(
        new PlanWriter(draft).write(bound.bound(), cut), reached, bound, ways(draft), cut);
  }

  private static int ways(Draft draft) {
    RouteGraph graph = draft.net.graph;
    int bits = 0;
    for (Path p : draft.paths) {
      for (int arc : p == null ? new int[0] : p.arcs()) {
        bits |= graph.edges().get(arc >> 1).ways();
      }
    }
    for (int h : draft.openHoles()) {
      bits |= graph.holes().get(h).ways();
    }
    for (RouteGraph.Work w : graph.works()) {
      bits |= draft.isOpen(w.id()) && !w.zone().isEmpty() ? Bans.wayOf(w) : 0;
    }
    return bits;
  }
}
