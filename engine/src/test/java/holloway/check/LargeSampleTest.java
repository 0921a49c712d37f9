package holloway.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holloway.pipeline.Answers;
import holloway.pipeline.Pipeline;
import holloway.pipeline.PlanSettings;
import holloway.pipeline.Progress;
import holloway.pipeline.Search;
import holloway.pipeline.Thoroughness;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

/**
 * The large awkward sample, by the first plan alone: a whole search at quick effort takes a minute
 * and a half.
 */
class LargeSampleTest {
  private static final Search FIRST =
      new Search(
          Thoroughness.QUICK, 0, Optional.of(Duration.ZERO), new AtomicLong()::incrementAndGet);

  @Test
  void everyRunHasAWayThatTheRefereeAccepts() {
    PlanSettings settings =
        new PlanSettings(Optional.empty(), FIRST, Optional.empty(), false, Optional.empty());
    Answers.Planned planned =
        new Pipeline(Progress.SILENT).plan(Path.of("../samples/wren-hollow.yaml"), settings);
    assertEquals(List.of(), planned.refusals());
    assertEquals(List.of(), planned.plan().unrouted());
    assertEquals(46, planned.plan().runs().size());
  }
}
