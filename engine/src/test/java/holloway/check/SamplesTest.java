package holloway.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holloway.pipeline.Answers;
import holloway.pipeline.Pipeline;
import holloway.pipeline.PlanSettings;
import holloway.pipeline.Progress;
import holloway.pipeline.Thoroughness;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The plans of the sample houses stand, as they would be written to a file. */
class SamplesTest {
  private static final PlanSettings QUICK =
      new PlanSettings(Optional.empty(), Thoroughness.QUICK, Optional.empty());

  @ParameterizedTest
  @ValueSource(strings = {"alder-lane", "quince-ranch", "plumb-corner", "tin-street"})
  void theRefereeAgrees(String sample) {
    Answers.Planned planned =
        new Pipeline(Progress.SILENT).plan(Path.of("../samples/" + sample + ".yaml"), QUICK);
    assertEquals(List.of(), planned.refusals());
  }
}
