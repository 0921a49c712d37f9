package holloway.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;

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

  private static final class Tally {
    int tried;
    int proved;
    double gap;
    final List<String> wrong = new ArrayList<>();

    void add(long seed) {
      Profile profile = Profile.values()[(int) (seed % 3)];
      RandomGraph r = new RandomGraph(seed, 7, 7, 1 + (int) (seed % 4), profile);
      long optimum = BruteForce.optimum(r.graph, r.order);
      Solved s = JointPlanner.solve(r.graph, r.order, SHORT_PROOF, Progress.SILENT);
      boolean all = s.plan().unrouted().isEmpty();
      long objective = all ? s.plan().totals().objective() : BruteForce.NONE;
      if (objective != optimum) {
        String found = all ? "" + objective : "a run left out";
        wrong.add("seed " + seed + ": " + found + " for " + optimum);
      }
      if (optimum < BruteForce.NONE) {
        tried++;
        proved += s.bound().bound() == optimum ? 1 : 0;
        gap += s.plan().totals().gap();
        if (s.bound().bound() > optimum) {
          wrong.add("seed " + seed + ": bound over " + optimum);
        }
      }
    }

    void print() {
      System.out.printf(
          "brute force: %d orders that can be planned, %d proved, mean gap %.4f, wrong: %s%n",
          tried, proved, gap / tried, wrong);
    }
  }

  @Test
  void planCostsTheLeastThereIsAndTheBoundIsNotOverIt() {
    Tally tally = new Tally();
    for (long seed = 1; seed <= SEEDS; seed++) {
      tally.add(seed);
      if (seed % 10_000 == 0) {
        System.out.print("of the first " + seed + ": ");
        tally.print();
      }
    }
    tally.print();
    assertEquals(List.of(), tally.wrong);
  }
}
