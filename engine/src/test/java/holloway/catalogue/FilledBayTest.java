package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.pipeline.ToyAttic;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import org.junit.jupiter.api.Test;

/** What lies in a bay sets the minutes a metre, and what shuts it shuts the way. */
@Feature("filled bay")
class FilledBayTest {
  private static Plan filled(String fill) {
    return WrittenHouse.of(ToyAttic.TEXT.replace("name: middle", "name: middle, fill: " + fill))
        .plan("surface", "outside");
  }

  @Test
  void fillByFill() {
    // 1.01025 + 2.12785 m of bays: empty 1.2 a metre, faced batt 2.4, loose 4
    double metres = 3.1381;
    double empty = filled("empty").totals().minutes();
    assertEquals(1.2 * metres, filled("faced-batt").totals().minutes() - empty, 0.001);
    assertEquals(2.8 * metres, filled("loose").totals().minutes() - empty, 0.001);
  }

  @Test
  @Feature("foam in a wall")
  void foamShutsTheWall() {
    Plan p = filled("foam");
    assertEquals(1, p.unrouted().size());
    assertTrue(p.unrouted().get(0).whyNot().toString().contains("(foam)"), p.unrouted()::toString);
  }
}
