package holloway.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.request.Profile;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The planner against trying everything, on small random graphs; a failure names its seed. Here a
 * thousand; the profile {@code fuzz} tries 100 000, or as many as {@code -Dholloway.orders=N} says.
 */
class AgainstBruteForceTest {
  private static final int SEEDS = Integer.getInteger("holloway.orders", 1_000);

  /** The usual search for a plan; its proof is not what is judged here. */
  private static final Budget SHORT_PROOF =
      new Budget(Budget.USUAL.orders(), Budget.USUAL.ruins(), 160, Budget.USUAL.looks());

  /** The two of them have to leave a hole that takes a second bore, and each alone stays there. */
  @Test
  void runsThatOnlyGainTogetherMoveTogether() {
    RandomGraph r = new RandomGraph(838, 7, 7, 3, Profile.FEWEST_HOLES);
    Solved s = JointPlanner.solve(r.graph, r.order, Budget.USUAL, Progress.SILENT);
    assertEquals(BruteForce.optimum(r.graph, r.order), s.plan().totals().objective());
  }

  @Test
  void priceIsNearTheOptimumAndTheBoundIsUnderIt() {
    int exact = 0;
    int proved = 0;
    int tried = 0;
    double gap = 0;
    List<String> far = new ArrayList<>();
    List<Long> dearer = new ArrayList<>();
    for (long seed = 1; seed <= SEEDS; seed++) {
      Profile profile = Profile.values()[(int) (seed % 3)];
      RandomGraph r = new RandomGraph(seed, 7, 7, 1 + (int) (seed % 4), profile);
      long optimum = BruteForce.optimum(r.graph, r.order);
      Solved s = JointPlanner.solve(r.graph, r.order, SHORT_PROOF, Progress.SILENT);
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
      if (objective > optimum * 1.05) {
        far.add(where + ": " + objective + " for " + optimum);
      }
      if (objective > optimum) {
        dearer.add(seed);
      }
      exact += objective == optimum ? 1 : 0;
      proved += s.bound().bound() == optimum ? 1 : 0;
      gap += s.plan().totals().gap();
    }
    System.out.printf(
        "brute force: %d orders, %d optimal, %d proved, mean gap %.4f, not optimal: %s%n",
        tried, exact, proved, gap / tried, dearer);
    assertEquals(List.of(), far, "over 5 % too dear");
    assertTrue(tried - exact <= tried / 500, exact + " of " + tried + " optimal");
  }
}
