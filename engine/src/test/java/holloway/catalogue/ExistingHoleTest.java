package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holloway.pipeline.ToyAttic;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import org.junit.jupiter.api.Test;

/** A hole that the work uncovered is free. */
@Feature("hole that was found")
class ExistingHoleTest {
  private static final String FOUND =
      "holes:\n  - { id: middle/top-plate/1420, diameter: 22 mm }\n";

  @Test
  void aFoundHoleSavesItsBore() {
    Plan before = WrittenHouse.of(ToyAttic.TEXT).plan();
    Plan after = WrittenHouse.of(ToyAttic.TEXT, FOUND).plan();
    // two plates bored from the attic at (4 + 2 x 2.5) x 1.5 + 2 = 15.5 each; one is there now
    assertEquals(2, before.totals().holes());
    assertEquals(1, after.totals().holes());
    assertEquals(155_000, before.totals().objective() - after.totals().objective());
  }
}
