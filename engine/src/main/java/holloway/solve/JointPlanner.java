package holloway.solve;

import holloway.plan.Certificate;
import holloway.routing.RouteGraph;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.IntStream;

/** The doorway: plans all runs of an order together and proves how good the plan is. */
public final class JointPlanner {
  /** Against the clock the plan has this part of the time, then the proof until the next. */
  private static final double FOR_THE_PLAN = 0.35;

  private static final double FOR_THE_PROOF = 0.85;

  /** Where near enough is asked for, this part of the budget is tried first. */
  private static final double EARLY = 0.1;

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
    Task task = new Task(graph, order);
    Reach reach = new Reach(task);
    Watch watch = new Watch(stop);
    if (stop.gap() > 0) {
      Solved near = early(task, reach, budget, progress, watch);
      if (near != null) {
        return near;
      }
    }
    PlanSearch search = new PlanSearch(task, budget, progress, watch);
    watch.until(FOR_THE_PLAN);
    Solution first = search.run(reach.routable());
    int[] routed = IntStream.range(0, task.runs()).filter(k -> first.paths()[k] != null).toArray();
    watch.until(FOR_THE_PROOF);
    Bound proof = new Bound(task, budget, progress, watch);
    Certificate bound = proof.prove(routed, first);
    watch.until(1);
    boolean open = bound.bound() < watch.enough(first.price(), task.net.grain());
    boolean more = open && proof.guide() != null && !watch.over();
    Solution led = more ? search.guided(routed, first, proof.guide()) : first;
    Solution best = open ? finished(task, budget, proof, led, watch) : led;
    progress.closing(best.price(), bound.bound());
    return answer(task, reach, best, bound, watch.cut());
  }

  /** A tenth of the search first: the answer if that is proven near enough already, or null. */
  private static Solved early(
      Task task, Reach reach, Budget budget, Progress progress, Watch watch) {
    Budget some = budget.part(EARLY);
    Progress steps = progress::at;
    watch.until(FOR_THE_PLAN * EARLY);
    Solution first = new PlanSearch(task, some, steps, watch).run(reach.routable());
    if (first.routed() < reach.routable().length) {
      return null;
    }
    watch.until(FOR_THE_PROOF * EARLY);
    Certificate bound = new Bound(task, some, steps, watch).prove(reach.routable(), first);
    if (bound.bound() < watch.enough(first.price(), task.net.grain())) {
      return null;
    }
    progress.closing(first.price(), bound.bound());
    return answer(task, reach, first, bound, false);
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
