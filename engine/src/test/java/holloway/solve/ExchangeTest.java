package holloway.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holloway.request.Profile;
import org.junit.jupiter.api.Test;

/** Two runs of unlike cable change ways, which neither would alone. */
class ExchangeTest {
  /** A thin and a thick cable part for one stretch; a larger bit is wanted in one hole only. */
  @Test
  void whichCableLiesWhereDecidesOnTheBit() {
    RandomGraph r = new RandomGraph(974, 7, 7, 3, Profile.SHORTEST);
    Solved s = JointPlanner.solve(r.graph, r.order, Budget.QUICK, Progress.SILENT);
    assertEquals(BruteForce.optimum(r.graph, r.order), s.plan().totals().objective());
  }
}
