package holloway.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.catalog.Cable;
import holloway.geometry.Point3;
import holloway.hollow.Way;
import holloway.hollow.WorkKind;
import holloway.plan.Plan;
import holloway.request.Profile;
import holloway.routing.RouteGraph.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What the plan of a toy graph says, by arithmetic. */
class PlanShapeTest {
  private static final List<Step> STEPS = List.of(new Step(13, 0), new Step(16, 9_000));

  private static Order order(int runs, String from, String to, Profile profile) {
    List<Order.Wanted> wanted = new ArrayList<>();
    for (int i = 0; i < runs; i++) {
      wanted.add(new Order.Wanted(to + "/" + i, from, to, Cable.get("cat6")));
    }
    return new Order(wanted, profile, Set.of(), Map.of());
  }

  private static Solved solve(GraphBuilder b, Order order) {
    return JointPlanner.solve(b.build(), order, Budget.USUAL, Progress.SILENT);
  }

  /** desk –fish through a hole– attic –by hand– attic –by hand– hatch; walked against the edges. */
  private static GraphBuilder chain() {
    GraphBuilder b = new GraphBuilder();
    int desk = b.node(0, 0, 0);
    int up = b.node(0, 0, 3000);
    int mid = b.node(2000, 0, 3000);
    int far = b.node(5000, 0, 3000);
    int hole = b.hole(List.of(new int[] {b.bore(140_000)}), STEPS, OptionalLong.of(50_000));
    b.edge(desk, up, 42_000, hole);
    b.edge(up, mid, 10_000);
    b.edge(mid, far, 15_000);
    return b.end("desk", desk).end("cabinet", far);
  }

  @Test
  void stepsAreWalkedFromEndToEnd() {
    Plan plan = solve(chain(), order(1, "cabinet", "desk", Profile.LEAST_WORK)).plan();
    List<Plan.PlanStep> steps = plan.runs().get(0).steps();
    assertEquals(
        List.of("leg", "crossing", "leg", "crossing", "leg"),
        steps.stream().map(s -> s.kind()).toList());
    Plan.PlanStep hand = steps.get(0);
    assertEquals("hand", hand.feed().orElseThrow());
    assertEquals(2, hand.path().size(), "the joint of two laid stretches in line is no bend");
    assertEquals(5.0, hand.m(), 1e-9);
    assertEquals(2.5, hand.minutes().orElseThrow(), 1e-9);
    assertEquals("place 1", steps.get(1).id(), "where the fish begins a hand has the cable");
    assertEquals(0, steps.get(1).m(), 1e-9);
    assertEquals(1, steps.get(2).fish().orElseThrow());
    assertEquals("H1", steps.get(3).label().orElseThrow());
    for (int i = 1; i < steps.size(); i++) {
      List<Point3> before = steps.get(i - 1).path();
      assertEquals(before.get(before.size() - 1), steps.get(i).path().get(0));
    }
    assertEquals(8.0, plan.runs().get(0).routeM(), 1e-9);
  }

  @Test
  void totalsAddUp() {
    Solved s = solve(chain(), order(1, "cabinet", "desk", Profile.LEAST_WORK));
    Plan.Totals t = s.plan().totals();
    assertEquals(140_000 + 42_000 + 25_000, t.objective());
    assertEquals(t.objective(), t.bound(), "one path is proved at once");
    assertEquals(20.7, t.minutes(), 1e-9);
    assertEquals(1, t.holes());
    Plan.PlannedHole h = s.plan().holes().get(0);
    assertEquals(13, h.diameterMm());
    assertEquals(76, h.depthMm(), 1e-9);
    assertEquals(14.0, h.minutes(), 1e-9);
  }

  @Test
  void eachProfileHasItsScale() {
    long work = 140_000 + 42_000 + 25_000;
    assertEquals(
        work + Network.HOLE_SCALE,
        solve(chain(), order(1, "cabinet", "desk", Profile.FEWEST_HOLES))
            .plan()
            .totals()
            .objective());
    assertEquals(
        work + 8_000L * 1_000_000,
        solve(chain(), order(1, "cabinet", "desk", Profile.SHORTEST)).plan().totals().objective());
  }

  @Test
  void moreCablesNeedALargerBitThenASecondBore() {
    Plan two = solve(chain(), order(2, "cabinet", "desk", Profile.LEAST_WORK)).plan();
    assertEquals(16, two.holes().get(0).diameterMm());
    Plan four = solve(chain(), order(4, "cabinet", "desk", Profile.LEAST_WORK)).plan();
    assertEquals(2, four.holes().get(0).bores());
    assertEquals(2, four.totals().holes());
    assertEquals(140_000 + 50_000 + 2 * 9_000 + 4 * 67_000, four.totals().objective());
  }

  @Test
  void whatDoesNotFitIsUnrouted() {
    Solved s = solve(chain(), order(9, "cabinet", "desk", Profile.LEAST_WORK));
    int routed = s.plan().runs().size();
    assertTrue(routed > 0 && routed < 9, routed + " of 9");
    assertEquals(9 - routed, s.plan().unrouted().size());
    assertTrue(s.bound().bound() <= s.plan().totals().objective());
  }

  @Test
  void aCutOffRunSaysHowFarItGets() {
    GraphBuilder b = chain();
    b.end("shed", b.node(9000, 0, 0));
    Solved s = solve(b, order(1, "cabinet", "shed", Profile.LEAST_WORK));
    assertEquals(List.of("shed/0"), s.plan().unrouted().stream().map(u -> u.id()).toList());
    assertEquals(List.of("place 3", "place 2", "place 0", "place 1"), s.reached().get("shed/0"));
  }

  /** The cheap way through the attic and a dear one outside. */
  private static GraphBuilder twoWays() {
    GraphBuilder b = new GraphBuilder();
    int from = b.node(0, 0, 0);
    int to = b.node(8000, 0, 0);
    int attic = b.work(WorkKind.ZONE, 250_000, 0, "attic");
    b.edge(from, to, 40_000, new int[0], new int[] {attic}, Way.ATTIC.bit());
    b.edge(from, to, 200_000, new int[0], new int[0], Way.OUTSIDE.bit());
    return b.end("cabinet", from).end("desk", to);
  }

  @Test
  void waysAreCompared() {
    List<Compare.Line> lines =
        Compare.of(
            twoWays().build(),
            order(3, "cabinet", "desk", Profile.LEAST_WORK),
            Budget.QUICK,
            Progress.SILENT);
    assertEquals(
        List.of(
            List.of("everything", "only attic", "without outside"),
            List.of("only outside", "without attic")),
        lines.stream().map(l -> l.names()).toList());
    assertEquals(370_000, lines.get(0).totals().objective());
    assertEquals(600_000, lines.get(1).totals().objective());
    assertEquals(List.of("attic"), lines.get(0).totals().zones());
  }

  @Test
  void aPinAndABanAreKept() {
    Order one = order(1, "cabinet", "desk", Profile.LEAST_WORK);
    assertEquals(200_000, solve(twoWays(), one).plan().totals().objective());
    Order pinned = new Order(one.runs(), Profile.LEAST_WORK, Set.of(), Map.of("desk/0", "attic"));
    Solved s = solve(twoWays(), pinned);
    assertEquals(290_000, s.plan().totals().objective());
    assertEquals(290_000, s.bound().bound());
    assertEquals(
        290_000, solve(twoWays(), one.withBans(Set.of("outside"))).plan().totals().objective());
  }

  @Test
  void routesOfOneRunReallyDiffer() {
    GraphBuilder b = chain();
    int hole = b.hole(List.of(new int[] {b.bore(90_000)}), STEPS, OptionalLong.empty());
    b.edge(3, 0, 300_000, hole);
    List<Routes.Route> routes =
        Routes.of(b.build(), order(1, "cabinet", "desk", Profile.LEAST_WORK), "desk/0", 3);
    assertEquals(List.of(207_000L, 390_000L), routes.stream().map(r -> r.price()).toList());
    assertTrue(routes.get(0).metres() > routes.get(1).metres());
  }
}
