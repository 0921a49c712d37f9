package holloway.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.request.Profile;
import holloway.support.ExactSingleRun;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * The exact method for whole houses against trying everything, where that can be done. {@code
 * -Dholloway.seeds=N} tries N graphs instead of 300.
 */
class ExactSingleRunTest {
  @Test
  void findsWhatTryingEverythingFinds() {
    int graphs = Integer.getInteger("holloway.seeds", 300);
    int routed = 0;
    for (long seed = 5_000; seed < 5_000 + graphs; seed++) {
      RandomGraph r = new RandomGraph(seed, 7, 7, 1, Profile.LEAST_WORK);
      Order.Wanted w = r.order.runs().get(0);
      long least = BruteForce.optimum(r.graph, r.order);
      ExactSingleRun.Best best =
          ExactSingleRun.of(r.graph, w.from(), w.to(), w.cable(), Set.copyOf(r.order.bans()));
      assertEquals(least < BruteForce.NONE, best.routed(), "seed " + seed);
      if (best.routed()) {
        assertEquals(least, best.price(), "seed " + seed);
        routed++;
      }
    }
    assertTrue(routed >= graphs / 2, "too few of the graphs have a route: " + routed);
  }
}
