package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holloway.pipeline.TwoStoreys;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import org.junit.jupiter.api.Test;

/** The provider's feed: from the box outside straight through the garage wall. */
@Feature("feed from outside")
class OutsideFeedTest {
  @Test
  void oneHoleThroughTheOuterWall() {
    Plan p =
        WrittenHouse.of(
                TwoStoreys.with(
                    "{ name: desk, in: office, wall: east, from: south 6 ft, height: 16 in, cables: [cat6] }",
                    "{ name: box, outside: garage south, from: west 6 ft, height: 4 ft, cables: [outdoor-cat6], feed: yes }"))
            .plan();
    assertEquals(1, p.totals().holes());
    assertEquals("outer wall", p.holes().get(0).kind());
    // (4 + cladding 5 + void 1 + board 1) x 1.0 from the garage, seal 2
    assertEquals(13.0, p.holes().get(0).minutes(), 1e-9);
  }
}
