package holloway.check;

import static holloway.check.Judged.assertRefused;
import static holloway.check.ToySteps.fish;
import static holloway.check.ToySteps.p;

import holloway.plan.Plan;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Steps of a run join, take turns and tell their lengths truly; runs are those that were asked for.
 */
class RefereeChainTest {
  @Test
  void aGapBetweenStepsIsRefused() {
    assertRefused(
        Spoiled.withStep(
            ToyPlan.good(),
            4,
            fish("east/bay-800", 2, 6.924, p(4057, 1002, 2324), p(4057, 1002, 400))),
        5,
        "starts at");
  }

  @Test
  void twoLegsInARowAreRefused() {
    assertRefused(
        Spoiled.withSteps(
            ToyPlan.good(),
            s -> {
              s.add(5, fish("east/bay-800", 3, 5, p(4057, 1000, 400), p(4057, 1000, 390)));
              return s;
            }),
        6,
        "they take turns");
  }

  @Test
  void aFalseLengthIsRefused() {
    Plan.PlanStep s = ToyPlan.steps().get(4);
    assertRefused(
        Spoiled.withStep(
            ToyPlan.good(),
            4,
            new Plan.PlanStep(
                s.kind(),
                s.id(),
                s.hollow(),
                s.label(),
                s.path(),
                s.m() - 0.5,
                s.feed(),
                s.fish(),
                s.minutes())),
        5,
        "its path is");
  }

  @Test
  void aFalseRouteLengthIsRefused() {
    Plan good = ToyPlan.good();
    Plan.PlannedRun r = good.runs().get(0);
    assertRefused(
        Spoiled.summed(
            good.withRuns(
                List.of(
                    new Plan.PlannedRun(r.id(), r.from(), r.to(), r.cable(), 7.4, 12, r.steps())),
                good.totals())),
        0,
        "its steps add up to");
  }

  @Test
  void aRunThatEndsElsewhereIsRefused() {
    assertRefused(
        Spoiled.withStep(
            ToyPlan.good(),
            4,
            fish("east/bay-800", 2, 6.524, p(4057, 1000, 2324), p(4057, 1000, 800))),
        5,
        "but desk is at");
    assertRefused(
        Spoiled.withStep(
            ToyPlan.good(),
            0,
            fish(
                "west/bay-800",
                1,
                6.384,
                p(-57, 1160, 1100),
                p(-57, 1160, 1170),
                p(-57, 1000, 2324))),
        1,
        "but cabinet is at");
  }

  @Test
  void aRunNobodyAskedForIsRefused() {
    Verdict v =
        Referee.check(ToyPlan.good(List.of("cat6", "cat6")), ToyHouse.build(), ToyRequest.of());
    Judged.says(v, 0, "nobody asked for this run");
  }
}
