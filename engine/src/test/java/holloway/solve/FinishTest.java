package holloway.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.request.Profile;
import holloway.routing.RouteGraph;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** All that could be cheaper is tried, and whoever was left out although all fit gets a path. */
class FinishTest {
  private static final Budget SHORT = new Budget(1, 0, 40, 1_000_000);

  private static final long STEPS = 1_000_000;
  private static final Watch ENDLESS = new Watch(Stop.NEVER);

  private static RandomGraph graph(long seed) {
    Profile profile = Profile.values()[(int) (seed % 3)];
    return new RandomGraph(seed, 7, 7, 1 + (int) (seed % 4), profile);
  }

  /** Each run on its own best path: a dear plan, so that there is much to try. */
  private static Solution apart(Task task) {
    Zones zones = new Zones(task.net);
    Draft draft = new Draft(task, zones);
    int[] runs = new Reach(task).routable();
    new Insertion(draft, new MarginalSearch(draft, zones)).independent(runs);
    return draft.save();
  }

  private static int[] routed(Solution s) {
    return IntStream.range(0, s.paths().length).filter(k -> s.paths()[k] != null).toArray();
  }

  @Test
  void aPoorPlanBecomesTheCheapest() {
    List<String> wrong = new ArrayList<>();
    int dear = 0;
    for (long seed = 1; seed <= 200; seed++) {
      RandomGraph r = graph(seed);
      Task task = new Task(r.graph, r.order);
      Solution poor = apart(task);
      if (poor.routed() == task.runs()) {
        Bound proof = new Bound(task, SHORT, Progress.SILENT);
        proof.prove(routed(poor), poor);
        Finish finish = new Finish(task, proof.ground(), STEPS, ENDLESS);
        long found = finish.cheapest(poor, proof.proven()).price();
        long least = BruteForce.optimum(r.graph, r.order);
        dear += poor.price() > least ? 1 : 0;
        if (found != least || !finish.complete()) {
          wrong.add("seed " + seed + ": " + found + " for " + least);
        }
      }
    }
    assertEquals(List.of(), wrong);
    assertTrue(dear > 10, "only " + dear + " plans were too dear before");
  }

  /** Orders that ruin and recreate alone leaves too dear, and some where it leaves out a run. */
  @Test
  void ordersThatTheSearchMissesAreFinished() {
    for (long seed : new long[] {6_659, 14_006, 20_663, 24_731, 28_157, 28_185}) {
      RandomGraph r = graph(seed);
      Solved s = JointPlanner.solve(r.graph, r.order, Budget.QUICK, Progress.SILENT);
      assertEquals(List.of(), s.plan().unrouted(), "seed " + seed);
      long least = BruteForce.optimum(r.graph, r.order);
      assertEquals(least, s.plan().totals().objective(), "seed " + seed);
    }
  }

  /** How many runs can have a path together. */
  private static int most(RouteGraph g, Order order) {
    if (order.runs().isEmpty() || BruteForce.optimum(g, order) < BruteForce.NONE) {
      return order.runs().size();
    }
    int most = 0;
    for (Order.Wanted w : order.runs()) {
      most = Math.max(most, most(g, order.withRuns(without(order, w))));
    }
    return most;
  }

  private static List<Order.Wanted> without(Order order, Order.Wanted run) {
    return order.runs().stream().filter(w -> w != run).toList();
  }

  /** From no plan at all one with as many runs as fit is found. */
  @Test
  void asManyRunsGetAPathAsFit() {
    int some = 0;
    for (long seed = 1; seed <= 100; seed++) {
      RandomGraph r = graph(seed);
      Task task = new Task(r.graph, r.order);
      int[] all = IntStream.range(0, task.runs()).toArray();
      Bound.Ground ground = new Bound(task, SHORT, Progress.SILENT).ground(all);
      Draft none = new Draft(task, new Zones(task.net));
      Solution found = new Finish(task, ground, 10 * STEPS, ENDLESS).more(none.save());
      int most = most(r.graph, r.order);
      some += most > 0 && most < task.runs() ? 1 : 0;
      assertEquals(most, found.routed(), "seed " + seed);
    }
    assertTrue(some > 1, "in " + some + " orders not all fit");
  }

  /** Where there is too much to try the plan in hand stays, and it is said that not all was. */
  @Test
  void tooLittleEffortLeavesThePlan() {
    RandomGraph r = graph(3);
    Task task = new Task(r.graph, r.order);
    Solution poor = apart(task);
    Bound proof = new Bound(task, new Budget(1, 0, 1, 1), Progress.SILENT);
    proof.prove(routed(poor), poor);
    Finish finish = new Finish(task, proof.ground(), 10, ENDLESS);
    assertEquals(poor, finish.cheapest(poor, proof.proven()));
    assertTrue(!finish.complete());
  }
}
