package holloway.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.certify.Verdict;
import holloway.request.Profile;
import java.util.Map;
import java.util.Optional;
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
    long before = System.nanoTime();
    assertEquals(Optional.empty(), Certified.check(h.graph, h.order, s).refusal());
    System.out.println(
        "XX parts "
            + s.bound().parts().size()
            + " shares "
            + s.bound().parts().stream().mapToInt(p -> p.shares().size()).sum()
            + " nodes "
            + h.graph.nodes().size()
            + " edges "
            + h.graph.edges().size()
            + " ms "
            + (System.nanoTime() - before) / 1_000_000);
  }
}
