package holloway.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holloway.request.Profile;
import java.util.List;
import org.junit.jupiter.api.Test;

/** No run is left out while there is a plan with all of them: small orders tried every way. */
class LeftOutTest {
  /** In each the others, put in first, fill a hole or choose a place that one run cannot have. */
  @Test
  void whoeverIsLeftOutGoesFirst() {
    for (long seed : new long[] {1415, 3167, 3383, 4355, 7415, 8300, 9902, 10610}) {
      RandomGraph r =
          new RandomGraph(seed, 7, 7, 1 + (int) (seed % 4), Profile.values()[(int) (seed % 3)]);
      Solved s = JointPlanner.solve(r.graph, r.order, Budget.QUICK, Progress.SILENT);
      assertEquals(List.of(), s.plan().unrouted(), "seed " + seed);
      long least = BruteForce.optimum(r.graph, r.order);
      assertEquals(least, s.plan().totals().objective(), "seed " + seed);
    }
  }
}
