package holloway.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holloway.pipeline.Answers;
import holloway.pipeline.Pipeline;
import holloway.pipeline.PlanSettings;
import holloway.pipeline.Progress;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The plans of the sample houses stand. */
class SamplesTest {
  @ParameterizedTest
  @ValueSource(strings = {"alder-lane", "quince-ranch", "plumb-corner", "tin-street"})
  void theRefereeAgrees(String sample) {
    Answers.Planned planned =
        new Pipeline(Progress.SILENT)
            .plan(Path.of("../samples/" + sample + ".yaml"), PlanSettings.USUAL);
    planned.refusals().forEach(r -> System.out.println("REF " + sample + " " + r));
    assertEquals(List.of(), planned.refusals());
  }
}
