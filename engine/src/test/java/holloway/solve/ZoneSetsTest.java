package holloway.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.request.Profile;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The bound is the least over all sets of zones, so one set without a look spoils it whole. */
class ZoneSetsTest {
  private static final HouseLike HOUSE = new HouseLike(1, 6, 10, 2, Profile.LEAST_WORK);

  @Test
  void noSetOfZonesIsLeftUnprovenHoweverSmallTheBudget() {
    Budget least = new Budget(1, 0, 1, 1);
    Solved s = JointPlanner.solve(HOUSE.graph, HOUSE.order, least, Progress.SILENT);
    assertTrue(s.bound().zones().size() > 1, "several sets to tell apart");
    assertTrue(s.plan().totals().gap() <= 0.4, "gap " + s.plan().totals().gap());
    assertEquals(Optional.empty(), Certified.check(HOUSE.graph, HOUSE.order, s).refusal());
  }
}
