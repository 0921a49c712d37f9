package holloway.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import holloway.plan.Certificate.Share;
import holloway.request.Profile;
import holloway.routing.RouteGraph;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/** The room of the straight bit, told of the flexible one too, would prove 10 000 of 510 000. */
class FlexibleHoleTest {
  private static final Order ORDER = FourOutlets.order();
  private static final RouteGraph GRAPH = FlexibleHole.builder().build();
  private static final Solved SOLVED =
      JointPlanner.solve(GRAPH, ORDER, Budget.QUICK, Progress.SILENT);

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
    assertSeesMoreOf(FlexibleHole.FLEXIBLE);
    assertSeesMoreOf(FlexibleHole.STRAIGHT);
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
