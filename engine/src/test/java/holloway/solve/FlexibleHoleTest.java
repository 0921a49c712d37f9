package holloway.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import holloway.plan.Certificate.Share;
import holloway.request.Profile;
import holloway.routing.RouteGraph;
import holloway.routing.RouteGraph.Step;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/**
 * One hole leads to four outlets. A flexible bit bores it for 10 000 to 19 mm, which three cables
 * pass; from a patch for 500 000, which another hole needs too, a straight one bores it to 22 mm
 * for as much. An outlet's own way costs 1 000 000. So the patch is opened: 510 000. The room of
 * the straight bit told of the flexible one would prove 10 000.
 */
class FlexibleHoleTest {
  private static final Order ORDER = FourOutlets.order();
  private static final RouteGraph GRAPH = graph();
  private static final Solved SOLVED =
      JointPlanner.solve(GRAPH, ORDER, Budget.QUICK, Progress.SILENT);

  private static RouteGraph graph() {
    GraphBuilder b = new GraphBuilder();
    int cabinet = b.node(0, 0, 0);
    int behind = b.node(0, 0, 1000);
    int patch = b.bore(500_000);
    List<int[]> methods = List.of(new int[] {b.bore(10_000)}, new int[] {patch, b.bore(10_000)});
    List<Step> steps = List.of(new Step(19, 0), new Step(22, 0));
    int hole = b.hole(methods, steps, OptionalLong.empty());
    b.firstIsFlexible(hole);
    b.edge(cabinet, behind, 0, hole);
    int aside = b.hole(List.of(new int[] {patch}), List.of(), OptionalLong.empty());
    b.edge(cabinet, b.node(1000, -1000, 0), 0, aside);
    FourOutlets.add(b, cabinet, behind, 1_000_000);
    return b.build();
  }

  @Test
  void theFirstPartProvesThatThePatchIsNeeded() {
    assertEquals(510_000, BruteForce.optimum(GRAPH, ORDER));
    assertEquals(510_000, SOLVED.plan().totals().objective());
    assertEquals(510_000, SOLVED.bound().bound());
    assertEquals(1, SOLVED.bound().parts().size(), "no part had to be split");
    assertEquals(Optional.empty(), Certified.check(GRAPH, ORDER, SOLVED).refusal());
  }

  /** Three pay for the flexible bore what they may, four for the straight one. */
  @Test
  void moreThanEitherBitTakesIsSeen() {
    assertSeesMoreOf(1);
    assertSeesMoreOf(2);
  }

  private static void assertSeesMoreOf(int bore) {
    Share one =
        shares().stream()
            .filter(s -> s.work() == bore && s.place().equals("hole"))
            .findFirst()
            .orElseThrow();
    assertSees("shares out", list -> list.add(new Share(bore, "hole", 0, one.group(), 9_000)));
  }

  /** On random graphs whose holes take fewer cables by their first method than by the others. */
  @Test
  void theBoundIsUnderTheOptimumAndThePlanReachesIt() {
    int rooms = 0;
    int missed = 0;
    for (long seed = 1; seed <= 80; seed++) {
      RandomGraph r = new RandomGraph(seed, 6, 6, 3 + (int) (seed % 2), Profile.LEAST_WORK);
      RouteGraph graph = r.flexible();
      long optimum = BruteForce.optimum(graph, r.order);
      Solved s = JointPlanner.solve(graph, r.order, Budget.QUICK, Progress.SILENT);
      if (optimum < BruteForce.NONE && s.plan().unrouted().isEmpty()) {
        assertTrue(s.bound().bound() <= optimum, "seed " + seed);
        assertEquals(Optional.empty(), Certified.check(graph, r.order, s).refusal());
        missed += s.plan().totals().objective() > optimum ? 1 : 0;
        rooms += uses(s, Share.OWN_ROOM) ? 1 : 0;
      }
    }
    assertEquals(0, missed, "plans dearer than the optimum");
    assertTrue(rooms >= 5, rooms + " proofs charge the room of thick cables by a method");
  }

  /** The two referees of these graphs share no code; the program of flows reckons in doubles. */
  @Test
  void theFlowProgramKnowsFlexibleBitsToo() {
    assumeTrue(
        System.getProperty("os.name").equals("Linux")
            && System.getProperty("os.arch").equals("amd64"),
        "the solver is there for one platform only");
    for (long seed = 1; seed <= 25; seed++) {
      RandomGraph r = new RandomGraph(seed, 6, 6, 3, Profile.LEAST_WORK);
      RouteGraph graph = r.flexible();
      long optimum = BruteForce.optimum(graph, r.order);
      FlowProgram.Answer mip = FlowProgram.solve(graph, r.order, 30_000);
      assertEquals(optimum >= BruteForce.NONE, mip.impossible(), "seed " + seed);
      if (!mip.impossible()) {
        assertEquals(optimum, mip.cost(), 2, "seed " + seed);
      }
    }
  }

  private static boolean uses(Solved s, String place) {
    return s.bound().parts().stream()
        .flatMap(p -> p.shares().stream())
        .anyMatch(x -> x.place().equals(place));
  }

  private static List<Share> shares() {
    return SOLVED.bound().parts().get(0).shares();
  }

  private static void assertSees(String words, Consumer<List<Share>> change) {
    Certified.assertSees(GRAPH, ORDER, SOLVED, words, change);
  }
}
