package holloway.check;

import static holloway.check.Judged.assertRefused;
import static holloway.check.Judged.judge;
import static org.junit.jupiter.api.Assertions.assertEquals;

import holloway.plan.Plan;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a plan hangs on is among its works, and its totals are their sum. */
class RefereeWorkTest {
  @Test
  void theGoodPlanStands() {
    assertEquals(List.of(), judge(ToyPlan.good()));
  }

  @Test
  void anAtticNobodySetsUpIsRefused() {
    assertRefused(Spoiled.without("zone/attic"), 3, "no work sets up the zone attic");
  }

  @Test
  void aHoleNobodyBoresIsRefused() {
    assertRefused(Spoiled.without("west/top/1000/bore"), 0, "which the plan does not open");
  }

  @Test
  void aFalseSumIsRefused() {
    Plan good = ToyPlan.good();
    Plan.Totals t = good.totals();
    assertRefused(
        good.withRuns(
            good.runs(),
            new Plan.Totals(
                t.objective() - 1,
                t.bound() - 1,
                0,
                t.minutes(),
                t.holes(),
                t.patches(),
                t.routeM(),
                t.cableM(),
                0,
                t.money(),
                "USD",
                t.zones())),
        0,
        "works and legs make");
    assertRefused(
        good.withRuns(
            good.runs(),
            new Plan.Totals(
                t.objective(),
                t.bound() + 1,
                0,
                t.minutes(),
                t.holes(),
                t.patches(),
                t.routeM(),
                t.cableM(),
                0,
                t.money(),
                "USD",
                t.zones())),
        0,
        "lies above the objective");
    assertRefused(
        good.withRuns(
            good.runs(),
            new Plan.Totals(
                t.objective(),
                t.bound(),
                0.01,
                t.minutes(),
                t.holes(),
                t.patches(),
                t.routeM(),
                t.cableM(),
                0,
                t.money(),
                "USD",
                t.zones())),
        0,
        "(objective - bound)");
    assertRefused(
        good.withRuns(
            good.runs(),
            new Plan.Totals(
                t.objective(),
                t.bound(),
                0,
                t.minutes(),
                1,
                t.patches(),
                t.routeM(),
                t.cableM(),
                0,
                t.money(),
                "USD",
                List.of())),
        0,
        "the works set up [attic]");
  }
}
