package holloway.check;

import static holloway.check.StonePlan.CHANNEL;
import static org.junit.jupiter.api.Assertions.assertEquals;

import holloway.plan.Plan;
import java.util.List;
import org.junit.jupiter.api.Test;

/** One groove's price cuts one groove, however many legs of that length there are in its strip. */
class GrooveRuleTest {
  private static List<Refusal> judged(Plan plan) {
    return StonePlan.judge(new GrooveRule(), plan);
  }

  @Test
  void theGoodPlanStands() {
    assertEquals(List.of(), judged(StonePlan.good()));
  }

  @Test
  void cablesInOneGrooveCutItOnce() {
    assertEquals(List.of(), judged(StonePlan.withSecondDeskRun(0)));
  }

  @Test
  void aSecondGrooveBesideTheFirstHasToBePaid() {
    // 92.16 min at 45 min a metre are 2.048 m; twice that lies in the strip.
    List<Refusal> said = judged(StonePlan.withSecondDeskRun(100_000_000));
    assertEquals(
        List.of("4096 mm are cut in this strip, works pay for 2048"),
        said.stream().map(Refusal::text).toList());
    assertEquals(CHANNEL, said.get(0).place());
  }

  @Test
  void theRefereeAsksThisRule() {
    Plan second = StonePlan.withSecondDeskRun(100_000_000);
    assertEquals(
        1,
        StonePlan.referee(second).stream().filter(r -> r.text().contains("in this strip")).count());
  }
}
