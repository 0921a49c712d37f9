package holloway.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.request.Profile;
import holloway.routing.RouteGraph;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What holds for every plan, on random graphs; a failure names its seed. */
class InvariantTest {
  @Test
  void boundIsNeverOverThePlanAndThePlanNeverOverRunsPlannedOneByOne() {
    for (long seed = 200; seed < 230; seed++) {
      Profile profile = Profile.values()[(int) (seed % 3)];
      RandomGraph r = new RandomGraph(seed, 25, 50, 8, profile);
      Solved s = JointPlanner.solve(r.graph, r.order, Budget.USUAL, Progress.SILENT);
      long objective = s.plan().totals().objective();
      assertTrue(s.bound().bound() <= objective, "seed " + seed);
      long apart = planApart(r);
      if (apart < Network.SHUT && s.plan().unrouted().isEmpty()) {
        assertTrue(objective <= apart, "seed " + seed + ": " + objective + " over " + apart);
      }
    }
  }

  /** Each run planned alone; then the works that happen to be shared are paid once. */
  private static long planApart(RandomGraph r) {
    Task task = new Task(r.graph, r.order);
    Draft draft = new Draft(task, new Zones(task.net));
    for (int k = 0; k < task.runs(); k++) {
      Order one = r.order.withRuns(List.of(r.order.runs().get(k)));
      Task alone = new Task(r.graph, one);
      Path p = new PlanSearch(alone, Budget.QUICK, Progress.SILENT).run(new int[] {0}).paths()[0];
      if (p == null
          || !IntStream.of(draft.alternatives(task.demands[k].from())).anyMatch(v -> v == p.start())
          || !IntStream.of(draft.alternatives(task.demands[k].to()))
              .anyMatch(v -> v == p.end(task.net))) {
        return Network.SHUT;
      }
      draft.add(k, p);
    }
    if (draft.price() < Network.SHUT) {
      new MethodChoice(draft).improve();
      new MethodsExact(draft).settle();
    }
    return draft.price();
  }

  @Test
  void theOrderOfTheRunsChangesNothing() {
    for (long seed = 300; seed < 306; seed++) {
      RandomGraph r = new RandomGraph(seed, 25, 50, 7, Profile.LEAST_WORK);
      Solved first = JointPlanner.solve(r.graph, r.order, Budget.QUICK, Progress.SILENT);
      List<Order.Wanted> mixed = new ArrayList<>(r.order.runs());
      Collections.shuffle(mixed, new Random(seed));
      Solved second =
          JointPlanner.solve(r.graph, r.order.withRuns(mixed), Budget.QUICK, Progress.SILENT);
      assertEquals(first.plan(), second.plan(), "seed " + seed);
      assertEquals(first.bound(), second.bound(), "seed " + seed);
    }
  }

  @Test
  void anotherFreeEdgeNeverRaisesTheOptimum() {
    for (long seed = 400; seed < 440; seed++) {
      RandomGraph r = new RandomGraph(seed, 6, 6, 2, Profile.LEAST_WORK);
      RouteGraph more = withFreeEdge(r.graph, new Random(seed));
      long before = BruteForce.optimum(r.graph, r.order);
      long after = BruteForce.optimum(more, r.order);
      assertTrue(after <= before, "seed " + seed);
      Solved s = JointPlanner.solve(more, r.order, Budget.USUAL, Progress.SILENT);
      if (before < BruteForce.NONE) {
        assertTrue(s.plan().totals().objective() <= before, "seed " + seed);
      }
    }
  }

  private static RouteGraph withFreeEdge(RouteGraph g, Random random) {
    int a = random.nextInt(g.nodes().size());
    int b = (a + 1 + random.nextInt(g.nodes().size() - 1)) % g.nodes().size();
    List<RouteGraph.Edge> edges = new ArrayList<>(g.edges());
    edges.add(
        new RouteGraph.Edge(edges.size(), a, b, 0, 0, 0, new int[0], new int[0], 0, List.of()));
    return new RouteGraph(g.nodes(), edges, g.holes(), g.works(), g.terminals());
  }

  @Test
  void everyShareOfABoundIsInItsPart() {
    HouseLike h = new HouseLike(3, 8, 8, 3, Profile.LEAST_WORK);
    Solved s = JointPlanner.solve(h.graph, h.order, Budget.QUICK, Progress.SILENT);
    assertTrue(s.plan().unrouted().isEmpty());
    assertTrue(s.bound().bound() > 0.6 * s.plan().totals().objective());
    long least = s.bound().parts().stream().mapToLong(p -> p.bound()).min().orElseThrow();
    long proved = Math.min(least, s.plan().totals().objective());
    assertTrue(s.bound().bound() >= proved && s.bound().bound() < proved + s.bound().grain());
  }
}
