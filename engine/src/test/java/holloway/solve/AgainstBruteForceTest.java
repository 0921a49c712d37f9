package holloway.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.request.Profile;
import org.junit.jupiter.api.Test;

/** The planner against trying everything, on small random graphs; a failure names its seed. */
class AgainstBruteForceTest {
  private static final int SEEDS = 150;

  @Test
  void priceIsNearTheOptimumAndTheBoundIsUnderIt() {
    int exact = 0;
    int proved = 0;
    int tried = 0;
    double gap = 0;
    for (long seed = 1; seed <= SEEDS; seed++) {
      Profile profile = Profile.values()[(int) (seed % 3)];
      RandomGraph r = new RandomGraph(seed, 7, 7, 1 + (int) (seed % 4), profile);
      long optimum = BruteForce.optimum(r.graph, r.order);
      Solved s = JointPlanner.solve(r.graph, r.order, Budget.USUAL, Progress.SILENT);
      String where = "seed " + seed;
      if (optimum >= BruteForce.NONE) {
        assertTrue(!s.plan().unrouted().isEmpty(), where + ": routed what cannot be routed");
        continue;
      }
      tried++;
      assertEquals(0, s.plan().unrouted().size(), where + ": a run was left out");
      long objective = s.plan().totals().objective();
      assertTrue(objective >= optimum, where + ": " + objective + " is under " + optimum);
      assertTrue(s.bound().bound() <= optimum, where + ": bound over " + optimum);
      assertTrue(objective <= optimum * 1.05, where + ": " + objective + " for " + optimum);
      exact += objective == optimum ? 1 : 0;
      proved += s.bound().bound() == optimum ? 1 : 0;
      gap += s.plan().totals().gap();
    }
    System.out.printf(
        "brute force: %d orders, %d optimal, %d proved, mean gap %.4f%n",
        tried, exact, proved, gap / tried);
    assertTrue(exact >= 0.95 * tried, exact + " of " + tried + " optimal");
  }
}
