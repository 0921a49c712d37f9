package holloway.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.pipeline.Answers;
import holloway.pipeline.Pipeline;
import holloway.pipeline.PlanSettings;
import holloway.pipeline.Progress;
import holloway.pipeline.Thoroughness;
import holloway.plan.Plan;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class StepMinutesTest {
  @Test
  void theMinutesOfTheStepsAreThePlans() {
    Answers.Packed p =
        new Pipeline(Progress.SILENT)
            .pack(
                Path.of("..", "samples", "plumb-corner.yaml"),
                new PlanSettings(Optional.empty(), Thoroughness.QUICK, Optional.empty()));
    Plan plan = p.planned().plan();
    Map<String, Double> minutes = StepMinutes.of(plan, p.work());
    double all = minutes.values().stream().mapToDouble(m -> m).sum();
    assertEquals(plan.totals().minutes(), all, 0.01);
    for (Plan.PlannedHole h : plan.holes()) {
      assertEquals(h.minutes(), minutes.get("drill/" + h.id()), 30, h.id());
      assertTrue(minutes.get("drill/" + h.id()) > 1, h.id());
    }
    for (Step s : p.work().steps()) {
      boolean none = s.kind() == Step.Kind.TEST || s.kind() == Step.Kind.LABEL;
      assertTrue(!none || !minutes.containsKey(s.id()), s.id());
    }
    // Getting set up in the cellar is on the first step there.
    Step first =
        p.work().steps().stream()
            .filter(s -> s.at().kind() == WorkPlace.Kind.CELLAR)
            .findFirst()
            .get();
    assertTrue(minutes.get(first.id()) >= 3, first.id());
  }
}
