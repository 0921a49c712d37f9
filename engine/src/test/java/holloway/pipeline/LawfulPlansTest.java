package holloway.pipeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.plan.Plan;
import holloway.support.RandomHouseText;
import holloway.support.Rough;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * No hole of a plan breaks a rule of law, alone or with another hole: the router chose it, so it
 * could have been avoided. What hangs on a place that the person asked for is no hole's finding.
 */
class LawfulPlansTest {
  @ParameterizedTest
  @ValueSource(strings = {"alder-lane", "quince-ranch", "plumb-corner", "tin-street"})
  void ofTheSamples(String sample) {
    assertTrue(holes(Path.of("../samples/" + sample + ".yaml")) > 3);
  }

  /** {@code -Dholloway.seeds=N} plans more. */
  @Test
  void ofRandomHouses() throws Exception {
    int holes = 0;
    int last = Integer.getInteger("holloway.seeds", 6);
    for (long seed = 101; seed < 101 + last; seed++) {
      Path house = Files.createTempFile("random", ".yaml");
      try {
        Files.writeString(house, RandomHouseText.of(RandomHouseText.Shape.of(seed)));
        holes += holes(house);
      } finally {
        Files.delete(house);
      }
    }
    assertTrue(holes > 4 * last, "too few holes to prove much: " + holes);
  }

  /** How many holes the plan makes, none of them against the law. */
  private static int holes(Path house) {
    Plan plan = new Pipeline(Progress.SILENT).plan(house, Rough.SETTINGS).plan();
    Set<String> made = plan.holes().stream().map(Plan.PlannedHole::id).collect(Collectors.toSet());
    List<Plan.FindingLine> broken = new ArrayList<>(plan.findings());
    broken.removeIf(f -> !f.breaksLaw() || !made.contains(f.place()));
    assertEquals(List.of(), broken, house.toString());
    return plan.holes().size();
  }
}
