package holloway.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.request.Profile;
import holloway.routing.RouteGraph;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * The exact best price of a single run on a fixed graph: it never grows when something in the way
 * is taken out or a hole made cheaper, and never falls when something is banned. The planner finds
 * that price on every one of these graphs.
 */
class MonotoneTest {
  private static long best(RouteGraph g, Order order, long seed) {
    long exact = BruteForce.optimum(g, order);
    Solved s = JointPlanner.solve(g, order, Budget.USUAL, Progress.SILENT);
    if (exact < BruteForce.NONE) {
      assertEquals(exact, s.plan().totals().objective(), "seed " + seed);
    } else {
      assertEquals(1, s.plan().unrouted().size(), "seed " + seed);
    }
    return exact;
  }

  @Test
  void takingABlockOutOfTheWayNeverCostsMore() {
    for (long seed = 700; seed < 740; seed++) {
      RandomGraph r = new RandomGraph(seed, 7, 7, 1, Profile.LEAST_WORK);
      long before = best(r.graph, r.order, seed);
      for (RouteGraph.Edge e : r.graph.edges()) {
        if (e.holes().length > 0) {
          int[] fewer = Arrays.copyOf(e.holes(), e.holes().length - 1);
          RouteGraph free = withEdge(r.graph, e, fewer);
          assertTrue(best(free, r.order, seed) <= before, "seed " + seed + " edge " + e.id());
          break;
        }
      }
    }
  }

  @Test
  void aCheaperHoleNeverCostsMore() {
    for (long seed = 740; seed < 780; seed++) {
      RandomGraph r = new RandomGraph(seed, 7, 7, 1, Profile.LEAST_WORK);
      long before = best(r.graph, r.order, seed);
      int cheaper = new Random(seed).nextInt(r.graph.works().size());
      List<RouteGraph.Work> works = new ArrayList<>(r.graph.works());
      RouteGraph.Work w = works.get(cheaper);
      works.set(
          cheaper,
          new RouteGraph.Work(
              w.id(), w.name(), w.kind(), w.price() / 2, w.holes(), w.patches(), w.zone()));
      RouteGraph g =
          new RouteGraph(
              r.graph.nodes(), r.graph.edges(), r.graph.holes(), works, r.graph.terminals());
      assertTrue(best(g, r.order, seed) <= before, "seed " + seed);
    }
  }

  @Test
  void aBanNeverMakesItCheaper() {
    for (long seed = 780; seed < 820; seed++) {
      RandomGraph r = new RandomGraph(seed, 7, 7, 1, Profile.LEAST_WORK);
      long before = best(r.graph, r.order, seed);
      String banned = r.graph.holes().get(new Random(seed).nextInt(r.graph.holes().size())).site();
      Order order = r.order.withBans(Set.of(banned));
      Solved s = JointPlanner.solve(r.graph, order, Budget.USUAL, Progress.SILENT);
      boolean stillRouted = s.plan().unrouted().isEmpty();
      assertTrue(!stillRouted || s.plan().totals().objective() >= before, "seed " + seed);
      assertTrue(before < BruteForce.NONE || !stillRouted, "seed " + seed);
    }
  }

  private static RouteGraph withEdge(RouteGraph g, RouteGraph.Edge e, int[] holes) {
    List<RouteGraph.Edge> edges = new ArrayList<>(g.edges());
    edges.set(
        e.id(),
        new RouteGraph.Edge(
            e.id(),
            e.a(),
            e.b(),
            e.price(),
            e.length(),
            e.visible(),
            holes,
            e.works(),
            e.ways(),
            e.pieces()));
    return new RouteGraph(g.nodes(), edges, g.holes(), g.works(), g.terminals());
  }
}
