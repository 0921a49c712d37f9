package holloway.pipeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.plan.Plan;
import holloway.request.Profile;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The fewest holes to the upstairs desk by each way of working, counted by hand. */
class FewestHolesTest {
  private static final long HOLE = 10_000_000_000L;
  private static final String HOUSE =
      TwoStoreys.with(
          "beside: garage north", "beside: office north", "from: ground", "from: upper");

  private static Plan fewest(String... bans) {
    return WrittenHouse.of(HOUSE).plan(Profile.FEWEST_HOLES, bans);
  }

  @Test
  void straightThroughTheFloorAndRoundTheRoom() {
    // ceiling, bay and floor in one stroke: one hole, if trunking may be seen
    Plan p = fewest();
    assertEquals(1, p.totals().holes());
    assertTrue(p.totals().objective() > HOLE && p.totals().objective() < 2 * HOLE);
  }

  @Test
  void byTheChaseAndTheAtticTwo() {
    // the chase's floor, the plate over the desk's bay; the chase is open at the top
    Plan p = fewest("surface", "outside");
    assertEquals(2, p.totals().holes());
    assertEquals(List.of("attic"), p.totals().zones());
    assertEquals(
        2 * HOLE + Math.round(91.125885 * 10_000),
        p.totals().objective(),
        30.0,
        "two holes + minutes");
  }

  @Test
  void withoutTheChaseThereIsNoTidyWayUpHere() {
    // The attic is only reached through the upper storey, the low wall's bays end under blocking.
    Plan p = fewest("surface", "outside", "chase");
    assertEquals(1, p.unrouted().size());
  }
}
