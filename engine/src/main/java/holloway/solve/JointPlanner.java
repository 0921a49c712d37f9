package holloway.solve;

import holloway.plan.Certificate;
import holloway.routing.RouteGraph;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.IntStream;

/** The doorway: plans all runs of an order together and proves how good the plan is. */
public final class JointPlanner {
  private JointPlanner() {}

  /**
   * The cheapest plan found, with a proven lower bound for the runs it routes. Runs that cannot be
   * routed are listed in the plan and left out of both figures.
   */
  public static Solved solve(RouteGraph graph, Order order, Budget budget, Progress progress) {
    Task task = new Task(graph, order);
    Reach reach = new Reach(task);
    PlanSearch search = new PlanSearch(task, budget, progress);
    Solution first = search.run(reach.routable());
    int[] routed = IntStream.range(0, task.runs()).filter(k -> first.paths()[k] != null).toArray();
    Bound proof = new Bound(task, budget, progress);
    Certificate bound = proof.prove(routed, first);
    boolean open = bound.bound() < first.price() && proof.guide() != null;
    Solution best = open ? search.guided(routed, first, proof.guide()) : first;
    Draft draft = new Draft(task, new Zones(task.net));
    draft.load(best);
    TreeMap<String, List<String>> reached = new TreeMap<>();
    for (int k = 0; k < task.runs(); k++) {
      if (best.paths()[k] == null) {
        reached.put(order.runs().get(k).id(), reach.nearest(k));
      }
    }
    return new Solved(new PlanWriter(draft).write(bound.bound()), reached, bound, ways(draft));
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
