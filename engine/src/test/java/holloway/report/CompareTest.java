package holloway.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.pipeline.Answers;
import holloway.pipeline.PlanSettings;
import holloway.pipeline.ToyStages;
import holloway.units.UnitSystem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CompareTest {
  @TempDir Path folder;

  private List<Way> ways(ToyStages stages) throws Exception {
    Path house = Files.writeString(folder.resolve("toy.yaml"), "");
    return stages.pipeline().compare(house, PlanSettings.USUAL).ways().stream()
        .map((Answers.WayOfWorking w) -> new Way(w.name(), w.bans(), w.sameAs(), w.plan()))
        .toList();
  }

  @Test
  void everyWayIsPlannedOnceAndEqualPlansAreFolded() throws Exception {
    ToyStages stages = new ToyStages();
    List<Way> ways = ways(stages);
    assertEquals(11, stages.bansSeen.size());
    assertEquals(List.of(), stages.bansSeen.get(0));
    assertEquals(List.of("attic"), stages.bansSeen.get(1));
    assertTrue(
        stages.bansSeen.contains(List.of("attic", "outside", "surface", "under-floor")),
        "chase alone");
    assertEquals(
        List.of("all ways allowed", "without attic"), ways.stream().map(Way::name).toList());
    assertEquals(5, ways.get(0).sameAs().size());
    assertEquals(4, ways.get(1).sameAs().size());
  }

  @Test
  void waysTheHouseDoesNotHaveAreNotPlannedTwice() throws Exception {
    ToyStages stages = new ToyStages();
    stages.present = java.util.Set.of("attic", "surface");
    List<Way> ways = ways(stages);
    assertEquals(4, stages.bansSeen.size(), "nothing, attic, surface or both shut");
    assertEquals(
        11, ways.stream().mapToInt(w -> 1 + w.sameAs().size()).sum(), "every way is still told");
  }

  @Test
  void theTableSaysWhatIsWonAndLost() throws Exception {
    String text = CompareText.of(ways(new ToyStages()), UnitSystem.METRIC, Ink.PLAIN);
    assertTrue(text.lines().allMatch(l -> l.length() <= 80), text);
    assertTrue(text.contains("  without attic        3 h 20 min      5        1"), text);
    assertTrue(text.contains("no set-up of attic"), text);
    assertTrue(text.contains("3 holes more, 1 patch more, 1 h 40 min more, 3.0 m more in"), text);
  }
}
