package holloway.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.cli.Holloway;
import holloway.pipeline.InputTrouble;
import holloway.pipeline.LiveHouse;
import holloway.pipeline.Pipeline;
import holloway.pipeline.PlanSettings;
import holloway.pipeline.Progress;
import holloway.pipeline.Search;
import holloway.pipeline.Thoroughness;
import holloway.plan.Plan;
import holloway.request.Profile;
import holloway.units.UnitSystem;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pictures and window plan what {@code plan} plans by the same options, and say the same of it. */
final class PlannedAsAskedTest {
  private static final Path HUT = Path.of("src", "test", "resources", "hut.yaml");

  @TempDir Path dir;
  private PlanSettings asked;

  /** The most that can be asked for at once, each of it unlike what the hut's own file says. */
  @BeforeEach
  void ask() throws Exception {
    Path prices = dir.resolve("prices.yaml");
    Files.copy(Path.of("..", "samples", "prices", "example.yaml"), prices);
    asked =
        new PlanSettings(
            Optional.of(Profile.FEWEST_HOLES),
            new Search(Thoroughness.QUICK),
            Optional.of(UnitSystem.METRIC),
            false,
            Optional.of(prices));
  }

  private static void same(Plan plan, Plan seen) {
    assertEquals(plan.profile(), seen.profile());
    assertEquals(plan.inputs(), seen.inputs());
    assertEquals(plan.runs(), seen.runs());
    assertEquals(plan.holes(), seen.holes());
    assertEquals(plan.works(), seen.works());
    assertEquals(plan.findings(), seen.findings());
    assertEquals(plan.materials(), seen.materials());
    assertEquals(plan.totals(), seen.totals());
  }

  @Test
  void aPictureIsOfThePlanThatPlanGives() {
    Plan plan = new Pipeline(Progress.SILENT).plan(HUT, asked).plan();
    var seen = new Pipeline(Progress.SILENT).picture(HUT, asked, List.of());
    same(plan, seen.planned().plan());
    assertEquals(seen.planned().plan(), seen.house().orElseThrow().plan());
    assertEquals(UnitSystem.METRIC, seen.house().orElseThrow().units());
    assertEquals("fewest-holes", plan.profile());
    assertTrue(plan.totals().money().isPresent(), "priced");
  }

  @Test
  void withoutTheAtticNoCableLiesInIt() {
    var all = new Pipeline(Progress.SILENT).picture(HUT, asked, List.of());
    var seen = new Pipeline(Progress.SILENT).picture(HUT, asked, List.of("attic"));
    assertFalse(all.planned().request().wishes().bans().contains("attic"));
    assertTrue(seen.planned().request().wishes().bans().contains("attic"));
    assertFalse(seen.planned().plan().totals().zones().contains("attic"));
  }

  @Test
  void theWindowShowsThePlanThatPlanGivesAndReadsItAgainSo() {
    Plan plan = new Pipeline(Progress.SILENT).plan(HUT, asked).plan();
    LiveHouse live = LiveHouse.open(HUT, asked, Progress.SILENT);
    same(plan, live.judged().plan());
    assertEquals(UnitSystem.METRIC, live.units());
    LiveHouse again = live.reopened(HUT);
    same(plan, again.judged().plan());
    assertEquals(UnitSystem.METRIC, again.units());
  }

  @Test
  void aPriceFileThatIsNotThereIsSaidSo() {
    PlanSettings none = PlanSettings.by(Optional.of(dir.resolve("none.yaml")), Optional.empty());
    Assertions.assertThrows(InputTrouble.class, () -> LiveHouse.open(HUT, none, Progress.SILENT));
  }

  @Test
  void aWrongAimEndsBeforeAnythingOpens() {
    for (String verb : List.of("view", "picture")) {
      ByteArrayOutputStream said = new ByteArrayOutputStream();
      PrintStream err = new PrintStream(said, true, StandardCharsets.UTF_8);
      int code =
          Holloway.run(
              new String[] {verb, HUT.toString(), "--profile", "least"},
              err,
              err,
              new ViewVerb(err, err, Progress.SILENT),
              new PictureVerb(err, Progress.SILENT));
      assertEquals(2, code, said.toString(StandardCharsets.UTF_8));
    }
  }
}
