package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.pipeline.TwoStoreys;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Under bare joists a person stands below, lays the cable and bores the plate above from there. */
@Feature("open ceiling")
class OpenCeilingTest {
  @Test
  void thePlateIsBoredFromBelow() {
    Plan p =
        WrittenHouse.of(
                TwoStoreys.with(
                    "garage: { level: ground, size: 12 ft x 12 ft, garage: yes }",
                    "garage: { level: ground, size: 12 ft x 12 ft, garage: yes, ceiling: open }",
                    "bearing: yes",
                    "bearing: no"))
            .plan("surface", "outside");
    assertEquals(List.of(), p.unrouted());
    assertEquals(1, p.totals().holes());
    assertEquals("bottom plate", p.holes().get(0).kind());
    // (4 + plate 2.5 + subfloor 2) x 1.0 standing below, seal 2
    assertEquals(10.5, p.holes().get(0).minutes(), 1e-9);
    assertTrue(p.holes().get(0).method().contains("garage"), p.holes().get(0)::method);
  }
}
