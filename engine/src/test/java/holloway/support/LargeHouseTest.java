package holloway.support;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.plan.Plan;
import holloway.solve.Budget;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A house of 250 m2 with 30 runs goes through every stage; the larger one is in the profile. */
class LargeHouseTest {
  @TempDir Path folder;

  @Test
  void theSameSeedGivesTheSameHouse() {
    for (LargeHouse.Size size : LargeHouse.Size.values()) {
      assertEquals(LargeHouse.text(size, 1), LargeHouse.text(size, 1));
      assertNotEquals(LargeHouse.text(size, 1), LargeHouse.text(size, 2));
    }
  }

  @Test
  void everyRunOfAMediumHouseIsPlannedAndTheRefereeAgrees() throws IOException {
    Path file = folder.resolve("medium.yaml");
    Files.writeString(file, LargeHouse.text(LargeHouse.Size.MEDIUM, 1));
    StagedPlan staged = new StagedPlan(file);
    assertEquals(LargeHouse.Size.MEDIUM.rooms(), staged.placed.rooms().size());
    double area =
        staged.placed.rooms().stream().mapToDouble(r -> r.outline().signedAreaMm2() / 1e6).sum();
    assertEquals(LargeHouse.Size.MEDIUM.squareMetres(), area, 15);
    Plan plan = staged.solve(Budget.QUICK).plan();
    assertEquals(LargeHouse.Size.MEDIUM.runs(), plan.runs().size());
    assertEquals(0, plan.unrouted().size());
    assertTrue(plan.totals().bound() > 0);
    assertTrue(plan.totals().bound() <= plan.totals().objective());
    assertTrue(staged.refusals(plan).isEmpty());
  }
}
