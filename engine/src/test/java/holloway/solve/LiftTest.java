package holloway.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
 * Two holes lead to four outlets. Each takes two cables and needs a patch for 500 000, which a hole
 * that nobody wants needs too, besides a bore for 5 000. An outlet's own way costs 400 000. Both
 * holes cost 1 010 000; one and two own ways cost 1 305 000. Sent half and half, every run needs
 * each patch by half, though four cables do not pass one hole together.
 */
class LiftTest {
  private static final Order ORDER = FourOutlets.order();
  private static final RouteGraph GRAPH = graph();
  private static final Solved SOLVED =
      JointPlanner.solve(GRAPH, ORDER, Budget.QUICK, Progress.SILENT);

  private static RouteGraph graph() {
    GraphBuilder b = new GraphBuilder();
    int cabinet = b.node(0, 0, 0);
    int behind = b.node(0, 0, 1000);
    for (int way = 0; way < 2; way++) {
      int patch = b.bore(500_000);
      b.edge(cabinet, behind, 0, hole(b, patch));
      b.edge(cabinet, b.node(1000 * way, -1000, 0), 0, hole(b, patch));
    }
    FourOutlets.add(b, cabinet, behind, 400_000);
    return b.build();
  }

  private static int hole(GraphBuilder b, int patch) {
    int[] method = {patch, b.bore(5_000)};
    return b.hole(List.of(method), List.of(new Step(16, 0)), OptionalLong.empty());
  }

  @Test
  void theFirstPartProvesThePlan() {
    assertEquals(1_010_000, SOLVED.plan().totals().objective());
    assertEquals(1_010_000, SOLVED.bound().bound());
    assertEquals(1, SOLVED.bound().parts().size(), "no part had to be split");
    assertTrue(shares().stream().anyMatch(s -> s.place().equals(Share.LIFT)), "a patch lends");
    assertEquals(Optional.empty(), Certified.check(GRAPH, ORDER, SOLVED).refusal());
  }

  @Test
  void whatIsLentTwiceOrToAStrangerIsSeen() {
    Share lift =
        shares().stream().filter(s -> s.place().equals(Share.LIFT)).findFirst().orElseThrow();
    assertSees("shares out", list -> list.remove(lift));
    assertSees(
        "shares out and lends", list -> list.add(Share.lift(lift.work(), lift.at(), 0, 600_000)));
    assertSees("lends nothing", list -> list.add(Share.lift(lift.at(), lift.work(), 0, 1)));
    assertSees("lends nothing", list -> list.add(Share.lift(lift.work(), other(lift), 0, 1)));
    assertSees("lends nothing", list -> list.add(Share.lift(lift.work(), lift.at(), 0, -1)));
    assertSees("lends nothing", list -> list.add(Share.lift(99, lift.at(), 0, 1)));
  }

  /** On random graphs with tight holes and works that several holes need. */
  @Test
  void theBoundIsUnderTheOptimum() {
    int lent = 0;
    for (long seed = 1; seed <= 250; seed++) {
      RandomGraph r = new RandomGraph(seed, 6, 6, 3 + (int) (seed % 2), Profile.LEAST_WORK);
      RouteGraph graph = r.tight();
      long optimum = BruteForce.optimum(graph, r.order);
      Solved s = JointPlanner.solve(graph, r.order, Budget.QUICK, Progress.SILENT);
      if (optimum < BruteForce.NONE && s.plan().unrouted().isEmpty()) {
        assertTrue(s.bound().bound() <= optimum, "seed " + seed);
        assertEquals(Optional.empty(), Certified.check(graph, r.order, s).refusal());
        lent +=
            s.bound().parts().stream()
                    .flatMap(p -> p.shares().stream())
                    .anyMatch(x -> x.place().equals(Share.LIFT))
                ? 1
                : 0;
      }
    }
    assertTrue(lent >= 10, lent + " proofs lend");
  }

  /** The own work of a hole of the other way. */
  private static int other(Share lift) {
    return GRAPH.holes().stream()
        .flatMap(h -> h.methods().stream())
        .filter(m -> m.works()[0] != lift.work())
        .findFirst()
        .orElseThrow()
        .works()[1];
  }

  private static List<Share> shares() {
    return SOLVED.bound().parts().get(0).shares();
  }

  private static void assertSees(String words, Consumer<List<Share>> change) {
    Certified.assertSees(GRAPH, ORDER, SOLVED, words, change);
  }
}
