package holloway.app;

import holloway.pipeline.Pipeline;
import holloway.pipeline.PlanSettings;
import holloway.pipeline.PlannedHouse;
import holloway.pipeline.Progress;
import holloway.pipeline.Search;
import holloway.pipeline.Thoroughness;
import holloway.scene.Glb;
import holloway.scene.SceneMaker;
import holloway.view.Parity;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every sample's picture has its plan's numbers, and its model is sound; takes minutes. */
@EnabledIfSystemProperty(named = "holloway.large", matches = "yes")
class AllSamplesTest {
  @TempDir Path dir;

  @ParameterizedTest
  @ValueSource(
      strings = {"alder-lane", "plumb-corner", "quince-ranch", "tin-street", "wren-hollow"})
  void numbersAndModel(String name) throws Exception {
    // Which plan it is does not matter here.
    Search little =
        new Search(Thoroughness.QUICK, 0, Optional.of(Duration.ofSeconds(10)), System::nanoTime);
    PlanSettings by =
        new PlanSettings(Optional.empty(), little, Optional.empty(), false, Optional.empty());
    Path file = Path.of("..", "samples", name + ".yaml");
    PlannedHouse house =
        new Pipeline(Progress.SILENT).picture(file, by, List.of()).house().orElseThrow();
    Parity.check(house);
    GltfChecker.orSkip();
    GltfChecker.findsNothing(dir, Glb.of(SceneMaker.of(house.hollows(), house.plan())));
  }
}
