package holloway.check;

import static holloway.check.Judged.assertRefused;
import static holloway.check.Judged.judge;
import static holloway.check.ToySteps.fish;
import static holloway.check.ToySteps.laid;
import static holloway.check.ToySteps.p;
import static org.junit.jupiter.api.Assertions.assertEquals;

import holloway.plan.Plan;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A leg stays in its hollow and its cable hits no member. */
class RefereeLegTest {
  @Test
  void aLegThatRunsThroughAStudIsRefused() {
    assertRefused(
        Spoiled.withStep(
            ToyPlan.good(),
            4,
            fish(
                "east/bay-800",
                2,
                7.3,
                p(4057, 1000, 2324),
                p(4057, 1195, 2000),
                p(4057, 1000, 400))),
        5,
        "leaves east/bay-800");
  }

  @Test
  void aCableAlongAStudCutsIntoIt() {
    assertRefused(
        Spoiled.withStep(
            ToyPlan.good(),
            4,
            fish(
                "east/bay-800",
                2,
                7.4,
                p(4057, 1000, 2324),
                p(4057, 1180.5, 2200),
                p(4057, 1180.5, 500),
                p(4057, 1000, 400))),
        5,
        "runs into stud");
  }

  @Test
  void aLaidCableThroughAChordIsRefused() {
    assertRefused(
        Spoiled.withStep(
            ToyPlan.good(),
            2,
            laid(
                "attic",
                9,
                p(-57, 1000, 2400),
                p(-57, 1000, 2450),
                p(2000, 1600, 2450),
                p(4057, 1000, 2450),
                p(4057, 1000, 2400))),
        3,
        "runs into chord");
  }

  @Test
  void aLaidCableMayTouchTheChordsItLiesOn() {
    Plan plan =
        Spoiled.withStep(
            ToyPlan.good(),
            2,
            laid(
                "attic",
                5.492,
                p(-57, 1000, 2400),
                p(-57, 1000, 2489),
                p(-57, 1600, 2489),
                p(4057, 1600, 2489),
                p(4057, 1000, 2489),
                p(4057, 1000, 2400)));
    assertEquals(List.of(), judge(plan));
  }
}
