package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.pipeline.Minutes;
import holloway.pipeline.TwoStoreys;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import java.util.List;
import org.junit.jupiter.api.Test;

/** An outlet in a ceiling under joists: its own cut-out is the hand at the end of the joist bay. */
@Feature("outlet in a ceiling")
class CeilingOutletTest {
  private static final String DESK =
      "{ name: desk, in: office, wall: east, from: south 6 ft, height: 16 in, cables: [cat6] }";
  private static final String CEILING =
      "{ name: point, in: den, ceiling: [west 5 ft, south 6 ft], cables: [cat6], power: class 4 }";

  @Test
  void oneBoardBoredAndTheBayFished() {
    Plan p =
        WrittenHouse.of(TwoStoreys.with(DESK, CEILING, "bearing: yes", "bearing: no"))
            .plan("surface", "outside");
    assertEquals(1, p.totals().holes());
    assertEquals(0, p.totals().patches());
    // ceiling cut-out 12, garage board (4 + 1) x 1 + 2
    assertEquals(12, Minutes.work(p, "point/cut-out"), 1e-9);
    assertEquals(7, p.holes().get(0).minutes(), 1e-9);
  }

  @Test
  @Feature("blocking over a bearing wall")
  void blockingOverABearingWallAsksForAPatch() {
    Plan p = WrittenHouse.of(TwoStoreys.with(DESK, CEILING)).plan("surface", "outside");
    assertTrue(p.totals().patches() >= 1, p.works()::toString);
    assertEquals(List.of(), p.unrouted());
  }
}
