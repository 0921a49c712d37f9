package holloway.pipeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.plan.Plan;
import holloway.plan.PlanJson;
import holloway.support.TwoRooms;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A rule file reaches the sites that are offered, the rules and the referee alike. */
class OwnRulesPlanTest {
  private static final String HOUSE =
      TwoRooms.UNDER_ONE_ROOF
          + """
      walls:
        - { between: [den, study], bearing: yes }
      cabinet: { in: den, wall: east, from: south 2 ft, height: 5 ft }
      outlets:
        - { name: desk, in: study, wall: west, from: south 9 ft, height: 16 in, cables: [cat6, cat6, cat6] }
      """;

  @TempDir Path folder;
  private Path house;

  @BeforeEach
  void write() throws Exception {
    house = Files.writeString(folder.resolve("house.yaml"), HOUSE);
  }

  private PlanSettings by(String figure) throws Exception {
    String text = "rules: Brookfield\nbased-on: us\n" + figure + "\n";
    return PlanSettings.by(
        Optional.empty(), Optional.of(Files.writeString(folder.resolve("rules.yaml"), text)));
  }

  private Answers.Planned plan(PlanSettings settings) {
    return new Pipeline(Progress.SILENT).plan(house, settings);
  }

  private static List<Integer> plateBits(Plan plan) {
    return plan.holes().stream()
        .filter(h -> h.kind().contains("plate"))
        .map(Plan.PlannedHole::diameterMm)
        .toList();
  }

  @Test
  void aStricterPlateGetsSmallerHolesAndTheOldPlanIsRefused() throws Exception {
    Plan usual = plan(PlanSettings.USUAL).plan();
    // Three cables go through one hole of 19 mm or more in a plate of 89 mm; 20 % of it are 17.8
    // mm.
    assertTrue(plateBits(usual).stream().anyMatch(b -> b >= 19), plateBits(usual).toString());
    PlanSettings strict =
        by("bearing-plate-hole: { at-most: 20 %, source: by-law 7, severity: law }");
    Answers.Planned mine = plan(strict);
    assertEquals(List.of(), mine.refusals());
    assertTrue(plateBits(mine.plan()).stream().allMatch(b -> b <= 17), mine.plan().toString());
    assertTrue(mine.plan().inputs().stream().anyMatch(i -> i.file().equals("rules.yaml")));

    Path file = Files.writeString(folder.resolve("plan.json"), PlanJson.write(usual));
    Pipeline p = new Pipeline(Progress.SILENT);
    assertEquals(List.of(), p.referee(house, file).refusals());
    assertFalse(p.referee(house, file, strict).refusals().isEmpty());
  }

  @Test
  void aLooserOneIsToldBeforeAnythingElseIsBored() throws Exception {
    Plan plan = plan(by("bearing-plate-hole: { at-most: 70 %, source: a letter of 3 May }")).plan();
    Plan.FindingLine said =
        plan.findings().stream()
            .filter(f -> f.rule().equals("own-rules"))
            .findFirst()
            .orElseThrow();
    assertTrue(said.text().contains("70 % instead of half"), said.text());
    assertEquals("local rules of Brookfield: a letter of 3 May", said.source());
  }
}
