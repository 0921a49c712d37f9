package holloway.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.catalog.Cable;
import holloway.certify.Verdict;
import holloway.plan.Certificate;
import holloway.request.Profile;
import holloway.routing.Fares;
import holloway.routing.RouteGraph;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Each kind of cable pays its own metres and keeps off what it may not use. */
class FaresTest {
  /** From 0 to 3 by 1, long and cheap to lay, or by 2, short and dear to lay. */
  private static GraphBuilder fork() {
    GraphBuilder b = new GraphBuilder();
    b.node(0, 0, 0);
    b.node(0, 9000, 0);
    b.node(1000, 1000, 0);
    b.node(2000, 0, 0);
    b.edge(0, 1, 10_000);
    b.edge(1, 3, 10_000);
    b.edge(0, 2, 40_000);
    b.edge(2, 3, 40_000);
    return b.end("cabinet", 0).end("desk", 3);
  }

  private static final Order BOTH =
      new Order(
          List.of(
              new Order.Wanted("a", "cabinet", "desk", Cable.get("cat6")),
              new Order.Wanted("b", "cabinet", "desk", Cable.get("om4"))),
          Profile.LEAST_WORK,
          Set.of(),
          Map.of());

  private static RouteGraph with(Fares fares) {
    RouteGraph g = fork().build();
    return new RouteGraph(g.nodes(), g.edges(), g.holes(), g.works(), g.terminals(), fares);
  }

  @Test
  void dearCableGoesTheShortWayAndCheapCableTheLongOne() {
    // 18.1 m of the long way and 2.8 m of the short one, each leg rounded to a unit
    RouteGraph g = with(new Fares(Map.of("cat6", 1000.0, "om4", 10_000.0), Map.of()));
    Solved s = JointPlanner.solve(g, BOTH, Budget.USUAL, Progress.SILENT);
    long longWay = 9_000 + 9_220;
    long shortWay = 14_142 + 14_142;
    assertEquals(20_000 + longWay + 80_000 + shortWay, s.plan().totals().objective());
    assertEquals(s.plan().totals().objective(), s.bound().bound());
    assertEquals(10.0, s.plan().totals().minutes(), 1e-9, "minutes are labour");
    assertEquals(OptionalLong.empty(), refused(g, BOTH, s));
  }

  @Test
  void whatOneKindMayNotUseTheOtherMay() {
    RouteGraph g = with(new Fares(Map.of(), Map.of("om4", Set.of(0))));
    Solved s = JointPlanner.solve(g, BOTH, Budget.USUAL, Progress.SILENT);
    assertEquals(20_000 + 80_000, s.plan().totals().objective());
    assertEquals(OptionalLong.empty(), refused(g, BOTH, s));
    RouteGraph none = with(new Fares(Map.of(), Map.of("om4", Set.of(0, 3))));
    Solved t = JointPlanner.solve(none, BOTH, Budget.USUAL, Progress.SILENT);
    assertEquals(List.of("b"), t.plan().unrouted().stream().map(u -> u.id()).toList());
    assertEquals(20_000, t.plan().totals().objective());
  }

  @Test
  void nearTheOptimumAndProvenOnRandomGraphs() {
    int tried = 0;
    int exact = 0;
    for (long seed = 1; seed <= Integer.getInteger("holloway.orders", 60); seed++) {
      RandomGraph r =
          new RandomGraph(seed, 7, 7, 1 + (int) (seed % 3), Profile.values()[(int) (seed % 3)]);
      RouteGraph g = r.unlike();
      long optimum = BruteForce.optimum(g, r.order);
      Solved s = JointPlanner.solve(g, r.order, Budget.USUAL, Progress.SILENT);
      if (optimum >= BruteForce.NONE) {
        assertTrue(!s.plan().unrouted().isEmpty(), "seed " + seed);
        continue;
      }
      tried++;
      long objective = s.plan().totals().objective();
      assertEquals(0, s.plan().unrouted().size(), "seed " + seed);
      assertTrue(objective >= optimum, "seed " + seed + ": " + objective + " under " + optimum);
      assertTrue(s.bound().bound() <= optimum, "seed " + seed + ": bound over " + optimum);
      assertEquals(OptionalLong.empty(), refused(g, r.order, s), "seed " + seed);
      exact += objective == optimum ? 1 : 0;
    }
    assertTrue(exact >= 0.95 * tried, exact + " of " + tried + " optimal");
  }

  /** Two routes that meet may each be right to go its own way, so directions prove nothing. */
  @Test
  void aCertificateWithDirectionsIsRefusedWhereMetresCostUnlike() {
    RouteGraph g = with(Fares.NONE);
    Solved s = JointPlanner.solve(g, BOTH, Budget.USUAL, Progress.SILENT);
    Certificate c = s.bound();
    assertTrue(c.directed(), "alike, it has directions");
    RouteGraph unlike = with(new Fares(Map.of("om4", 1.0), Map.of()));
    Verdict v = Certified.check(unlike, BOTH, s.plan(), c);
    assertTrue(v.refusal().orElse("").contains("cost unlike"), v.toString());
  }

  private static OptionalLong refused(RouteGraph g, Order order, Solved s) {
    Verdict v = Certified.check(g, order, s);
    return v.refusal().isEmpty() ? OptionalLong.empty() : OptionalLong.of(v.bound());
  }
}
