package holloway.pipeline;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holloway.plan.Plan;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * From an open cellar into a wall a cable goes from storey to storey, though no ceiling is bored.
 */
class RiserPlanTest {
  private static final String HOUSE =
      """
      house: Over a cellar (invented)
      place: us
      built: 1994
      levels:
        cellar: { floor: slab, ceiling-height: 7 ft }
        ground: { above: cellar, floor: { joists: 2x10, run: east-west }, ceiling-height: 8 ft }
      rooms:
        cellar: { level: cellar, size: 12 ft x 12 ft, ceiling: open, finish: open, plain: yes }
        den: { level: ground, size: 12 ft x 12 ft, above: cellar, align: south-west }
      cabinet: { in: %s, wall: west, from: south 4 ft, height: 5 ft }
      outlets:
        - { name: desk, in: den, wall: east, from: south 6 ft, height: 16 in, cables: [cat6] }
      """;

  @TempDir Path folder;

  private long risers(String cabinet) throws Exception {
    Path house = Files.writeString(folder.resolve("house.yaml"), HOUSE.formatted(cabinet));
    Plan plan = new Pipeline(Progress.SILENT).plan(house, PlanSettings.USUAL).plan();
    assertEquals(1, plan.runs().size(), plan.unrouted().toString());
    return plan.findings().stream().filter(f -> f.rule().equals("riser-cable")).count();
  }

  @Test
  void fromTheCellarUp() throws Exception {
    assertEquals(1, risers("cellar"));
  }
}
