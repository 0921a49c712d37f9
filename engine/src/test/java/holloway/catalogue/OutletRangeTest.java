package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.pipeline.ToyAttic;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import org.junit.jupiter.api.Test;

/** A desk that may stand anywhere along the wall shares the cabinet's own bay: no hole at all. */
@Feature("outlet with a range")
class OutletRangeTest {
  @Test
  void theRangeFreesTheBayBehindTheCabinet() {
    assertEquals(2, WrittenHouse.of(ToyAttic.TEXT).plan().totals().holes());
    Plan p =
        WrittenHouse.of(ToyAttic.TEXT.replace("from: west 12 ft,", "from: west 4 ft, to: 12 ft,"))
            .plan();
    assertEquals(0, p.totals().holes());
    // two cut-outs and one fish of less than the wall's height
    assertTrue(p.totals().minutes() < 20 + 5 + 2.4 * 1.2, p.totals()::toString);
  }
}
