package holloway.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.catalog.Cable;
import holloway.certify.Verdict;
import holloway.hollow.WorkKind;
import holloway.request.Profile;
import holloway.routing.RouteGraph;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The checker agrees with every certificate of the planner; a failure names its seed. */
class CertificateTest {
  @Test
  void everyBoundIsProvenAndUnderTheOptimum() {
    for (long seed = 1; seed <= 150; seed++) {
      Profile profile = Profile.values()[(int) (seed % 3)];
      RandomGraph r = new RandomGraph(seed, 7, 7, 1 + (int) (seed % 4), profile);
      Solved s = JointPlanner.solve(r.graph, r.order, Budget.QUICK, Progress.SILENT);
      Verdict v = Certified.check(r.graph, r.order, s);
      assertEquals(Optional.empty(), v.refusal(), "seed " + seed);
      long optimum = BruteForce.optimum(r.graph, r.order);
      if (optimum < BruteForce.NONE) {
        assertTrue(s.bound().bound() <= v.bound() && v.bound() <= optimum, "seed " + seed);
      }
    }
  }

  @Test
  void bansAndPinsAreHeardToo() {
    int proved = 0;
    for (long seed = 900; seed < 940; seed++) {
      RandomGraph r = new RandomGraph(seed, 9, 14, 3, Profile.LEAST_WORK);
      String site = r.graph.holes().get(0).site();
      String hollow = r.graph.holes().get(3).hollowA();
      Order order =
          new Order(r.order.runs(), r.order.profile(), Set.of(site), Map.of("run 1", hollow));
      Solved s = JointPlanner.solve(r.graph, order, Budget.QUICK, Progress.SILENT);
      assertEquals(Optional.empty(), Certified.check(r.graph, order, s).refusal(), "seed " + seed);
      proved += s.bound().bound() > 0 ? 1 : 0;
    }
    assertTrue(proved > 20, proved + " bounds over nothing");
  }

  @Test
  void largerGraphsToo() {
    for (long seed = 200; seed < 210; seed++) {
      RandomGraph r = new RandomGraph(seed, 25, 50, 8, Profile.LEAST_WORK);
      Solved s = JointPlanner.solve(r.graph, r.order, Budget.USUAL, Progress.SILENT);
      assertEquals(
          Optional.empty(), Certified.check(r.graph, r.order, s).refusal(), "seed " + seed);
    }
    HouseLike h = new HouseLike(3, 8, 8, 3, Profile.LEAST_WORK);
    Solved s = JointPlanner.solve(h.graph, h.order, Budget.USUAL, Progress.SILENT);
    assertEquals(Optional.empty(), Certified.check(h.graph, h.order, s).refusal());
  }

  /** A share of an arc is one for all holes on it: twice the patch would be too much. */
  @Test
  void aWorkOfTwoHolesOnOneEdgeIsPaidOnce() {
    GraphBuilder b = new GraphBuilder();
    b.node(0, 0, 0);
    b.node(1000, 0, 0);
    int patch = b.work(WorkKind.PATCH, 500_000, 1, "");
    int first = b.hole(List.of(new int[] {b.bore(10_000), patch}), List.of(), OptionalLong.empty());
    int second =
        b.hole(List.of(new int[] {b.bore(20_000), patch}), List.of(), OptionalLong.empty());
    b.edge(0, 1, 1_000, first, second);
    RouteGraph graph = b.end("cabinet", 0).end("desk", 1).build();
    Order.Wanted run = new Order.Wanted("desk", "cabinet", "desk", Cable.get("cat6"));
    Order order = new Order(List.of(run), Profile.LEAST_WORK, Set.of(), Map.of());
    Solved s = JointPlanner.solve(graph, order, Budget.USUAL, Progress.SILENT);
    assertTrue(s.bound().directed());
    assertEquals(531_000, s.plan().totals().objective());
    Verdict v = Certified.check(graph, order, s);
    assertEquals(Optional.empty(), v.refusal());
    assertEquals(531_000, v.bound());
  }

  /** The shares stay; what they prove is the same or more when an edge gets dearer. */
  @Test
  void withTheSameSharesADearerEdgeNeverLowersTheBound() {
    int rose = 0;
    for (long seed = 500; seed < 540; seed++) {
      RandomGraph r = new RandomGraph(seed, 12, 20, 4, Profile.LEAST_WORK);
      Solved s = JointPlanner.solve(r.graph, r.order, Budget.QUICK, Progress.SILENT);
      long before = Certified.check(r.graph, r.order, s).bound();
      for (int e = 0; e < r.graph.edges().size(); e += 3) {
        RouteGraph dearer = withPrice(r.graph, e, 40_000);
        Verdict v = Certified.check(dearer, r.order, s);
        assertEquals(Optional.empty(), v.refusal(), "seed " + seed + " edge " + e);
        assertTrue(v.bound() >= before, "seed " + seed + " edge " + e);
        rose += v.bound() > before ? 1 : 0;
      }
    }
    assertTrue(rose > 10, rose + " bounds rose");
  }

  private static RouteGraph withPrice(RouteGraph g, int edge, long more) {
    List<RouteGraph.Edge> edges = new ArrayList<>(g.edges());
    RouteGraph.Edge e = edges.get(edge);
    edges.set(
        edge,
        new RouteGraph.Edge(
            e.id(),
            e.a(),
            e.b(),
            e.price() + more,
            e.length(),
            e.visible(),
            e.holes(),
            e.works(),
            e.ways(),
            e.pieces()));
    return new RouteGraph(g.nodes(), edges, g.holes(), g.works(), g.terminals());
  }
}
