package holloway.solve;

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

  private final Task next;
  private final Reach reach;
  private final Budget budget;
  private final Progress progress;
  private final Watch watch;

  Settling(Task next, Budget budget, Progress progress, Watch watch) {
    this.next = next;
    this.reach = new Reach(next);
    this.budget = budget;
    this.progress = progress;
    this.watch = watch;
  }

  Reach reach() {
    return reach;
  }

  /**
   * The plan, or null if some run that has a way finds none like that: then it has to be looked for
   * from nothing.
   *
   * @param known paths by run, null where there is none that is still open
   */
  Solution plan(Path[] known) {
    Budget some = new Budget(budget.orders(), budget.ruins() / AGAIN, 1, budget.looks());
    PlanSearch search = new PlanSearch(next, some, progress, watch);
    Solution mended = search.mend(reach.routable(), known);
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
