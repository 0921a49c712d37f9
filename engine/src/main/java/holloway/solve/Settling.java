package holloway.solve;

import holloway.routing.RouteGraph;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Lays a plan anew where only those spots of the ends are left that it chose. What was proven over
 * all spots holds for the plans of some, so nothing has to be proven again: the paths are kept
 * where nothing stands in their way now, and all of it is improved once more.
 */
final class Settling {
  /** This part of the budget's rounds improves the plan, which was the best of a whole search. */
  private static final int AGAIN = 4;

  final Task next;
  final Carry carry;
  final Reach reach;
  private final Task old;
  private final Solution before;
  private final Budget budget;
  private final Progress progress;
  private final Watch watch;

  /**
   * @param before a plan of {@code old}
   * @param graph the same house with fewer spots
   */
  Settling(
      Task old, Solution before, RouteGraph graph, Budget budget, Progress progress, Watch watch) {
    this.old = old;
    this.before = before;
    next = new Task(graph, old.order);
    carry = new Carry(old.net.graph, graph);
    reach = new Reach(next);
    this.budget = budget;
    this.progress = progress;
    this.watch = watch;
  }

  /**
   * The plan, or null if some run that has a way finds none like that: then it has to be looked for
   * from nothing.
   */
  Solution plan() {
    Budget some = new Budget(budget.orders(), budget.ruins() / AGAIN, 1, budget.looks());
    PlanSearch search = new PlanSearch(next, some, progress, watch);
    Solution mended = search.mend(reach.routable(), paths(old, before, next, carry));
    int[] runs = IntStream.range(0, next.runs()).filter(k -> mended.paths()[k] != null).toArray();
    return runs.length < reach.routable().length ? null : search.improved(runs, mended);
  }

  /** The paths of an old plan by new run, null where there is none that is still open. */
  static Path[] paths(Task old, Solution plan, Task next, Carry carry) {
    Path[] out = new Path[next.runs()];
    List<String> was = old.order.runs().stream().map(Order.Wanted::id).toList();
    for (int k = 0; k < out.length; k++) {
      int run = was.indexOf(next.order.runs().get(k).id());
      Path p = run < 0 ? null : carry.path(plan.paths()[run]);
      out[k] = p != null && OpenPaths.isOpen(next.net, p, next.demands[k]) ? p : null;
    }
    return out;
  }
}
