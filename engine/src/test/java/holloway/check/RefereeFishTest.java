package holloway.check;

import static holloway.check.Judged.assertRefused;
import static holloway.check.Judged.judge;
import static holloway.check.ToySteps.access;
import static holloway.check.ToySteps.bore;
import static holloway.check.ToySteps.fish;
import static holloway.check.ToySteps.laid;
import static holloway.check.ToySteps.p;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.house.Fill;
import holloway.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A fish stays within its limits, and a hand is at either end of it. */
class RefereeFishTest {
  @Test
  void aFishLongerThanItsLimitIsRefused() {
    Verdict filled = Referee.check(ToyPlan.good(), ToyHouse.build(Fill.FOAM), ToyRequest.of());
    Judged.says(filled, 1, "nobody can fish a stud bay filled with foam");
  }

  @Test
  void aFishThatTurnsBackIsRefused() {
    assertRefused(
        Spoiled.withStep(
            ToyPlan.good(),
            4,
            fish(
                "east/bay-800",
                2,
                7.5,
                p(4057, 1000, 2324),
                p(4057, 1000, 200),
                p(4057, 1000, 400))),
        5,
        "turns back");
  }

  @Test
  void aFishThatWandersSidewaysIsRefused() {
    assertRefused(
        Spoiled.withStep(
            ToyPlan.good(),
            4,
            fish(
                "east/bay-800",
                2,
                8,
                p(4057, 1000, 2324),
                p(4057, 1150, 2000),
                p(4057, 850, 1500),
                p(4057, 1000, 400))),
        5,
        "sideways");
  }

  @Test
  void aThirdHollowInOneFishIsRefused() {
    assertRefused(sideways(1, 1, 1), 5, "handed over 2 times");
  }

  @Test
  void aFishThatEndsInTheDarkIsRefused() {
    assertRefused(sideways(1, 2, 2), 1, "no hand is there");
  }

  @Test
  void aHandedOverFishWithAPatchBetweenStands() {
    Plan plan = sideways(1, 1, 2);
    assertRefused(plan, 3, "no hand is there");
    Plan patched =
        Spoiled.withSteps(
            plan,
            s -> {
              s.set(2, fish("west/bay-1200", 1, 13.362, p(-57, 1219, 1000), p(-57, 1400, 1000)));
              s.add(3, access("west/bay-1200/patch", p(-57, 1400, 1000)));
              s.add(4, fish("west/bay-1200", 2, 5, p(-57, 1400, 1000), p(-57, 1581, 1000)));
              return s;
            });
    List<Plan.PlannedWork> works = new ArrayList<>(patched.works());
    works.add(new Plan.PlannedWork("west/bay-1200/patch", "patch", 55, 1, 1, ""));
    Plan opened = Spoiled.with(patched, patched.holes(), works);
    assertTrue(
        judge(opened).stream().noneMatch(r -> r.text().contains("no hand")),
        judge(opened)::toString);
  }

  /** Cabinet bay, through two studs, with the given fish numbers for the three bays. */
  private static Plan sideways(int... fishes) {
    return Spoiled.withSteps(
        ToyPlan.good(),
        s ->
            new ArrayList<>(
                List.of(
                    fish(
                        "west/bay-800",
                        fishes[0],
                        5,
                        p(-57, 1000, 1200),
                        p(-57, 1000, 1000),
                        p(-57, 1181, 1000)),
                    bore("west/stud/1200", "H1", p(-57, 1181, 1000), p(-57, 1219, 1000)),
                    fish("west/bay-1200", fishes[1], 5, p(-57, 1219, 1000), p(-57, 1581, 1000)),
                    bore("west/stud/1600", "H2", p(-57, 1581, 1000), p(-57, 1619, 1000)),
                    fish("west/bay-1600", fishes[2], 5, p(-57, 1619, 1000), p(-57, 1800, 1000)))));
  }

  @Test
  void aBlindLegWithoutAFishIsRefused() {
    assertRefused(
        Spoiled.withStep(
            ToyPlan.good(), 4, laid("east/bay-800", 1, p(4057, 1000, 2324), p(4057, 1000, 400))),
        5,
        "belongs to no fish");
  }

  @Test
  void aFishEndingWhereNoBoxIsCutIsRefused() {
    assertRefused(Spoiled.without("desk/cut-out"), 5, "no cut-out is opened");
  }
}
