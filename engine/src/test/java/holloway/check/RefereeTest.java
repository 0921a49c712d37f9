package holloway.check;

import static holloway.check.ToyPlan.access;
import static holloway.check.ToyPlan.bore;
import static holloway.check.ToyPlan.fish;
import static holloway.check.ToyPlan.laid;
import static holloway.check.ToyPlan.p;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.house.Fill;
import holloway.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A plan that stands, and the same plan spoiled on purpose, one fault a test. */
class RefereeTest {
  @Test
  void theGoodPlanStands() {
    assertEquals(List.of(), judge(ToyPlan.good()));
  }

  @Test
  void aLegThatRunsThroughAStudIsRefused() {
    refused(
        ToyPlan.withStep(
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
    refused(
        ToyPlan.withStep(
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
    refused(
        ToyPlan.withStep(
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
        ToyPlan.withStep(
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

  @Test
  void aGapBetweenStepsIsRefused() {
    refused(
        ToyPlan.withStep(
            ToyPlan.good(),
            4,
            fish("east/bay-800", 2, 6.924, p(4057, 1002, 2324), p(4057, 1002, 400))),
        5,
        "starts at");
  }

  @Test
  void twoLegsInARowAreRefused() {
    refused(
        ToyPlan.withSteps(
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
    refused(
        ToyPlan.withStep(
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
    refused(
        ToyPlan.summed(
            good.withRuns(
                List.of(
                    new Plan.PlannedRun(r.id(), r.from(), r.to(), r.cable(), 7.4, 12, r.steps())),
                good.totals())),
        0,
        "its steps add up to");
  }

  @Test
  void anUnknownCrossingIsRefused() {
    refused(
        ToyPlan.withStep(
            ToyPlan.good(), 1, bore("west/top/1001", "H1", p(-57, 1000, 2324), p(-57, 1000, 2400))),
        2,
        "neither a crossing");
  }

  @Test
  void aShiftedCrossingIsRefused() {
    refused(
        ToyPlan.withSteps(
            ToyPlan.good(),
            s -> {
              s.set(3, bore("east/top/1000", "H2", p(4057, 1004, 2400), p(4057, 1004, 2324)));
              return s;
            }),
        4,
        "the crossing's axis is");
  }

  @Test
  void aCrossingIntoAnotherHollowIsRefused() {
    refused(
        ToyPlan.withStep(
            ToyPlan.good(),
            0,
            fish("west/bay-1200", 1, 6.124, p(-57, 1000, 1200), p(-57, 1000, 2324))),
        2,
        "opens into west/bay-800");
  }

  @Test
  void aHoleThatIsNotListedIsRefused() {
    Plan good = ToyPlan.good();
    refused(
        ToyPlan.with(good, good.holes().subList(1, 2), good.works()),
        2,
        "not among the plan's holes");
  }

  @Test
  void aHoleThatNobodyPassesIsRefused() {
    Plan good = ToyPlan.good();
    List<Plan.PlannedHole> holes = new ArrayList<>(good.holes());
    holes.add(ToyPlan.hole("west/top/1400", "H3", p(-57, 1400, 2362), "west/bay-1200", List.of()));
    refused(ToyPlan.with(good, holes, good.works()), 0, "no run passes");
  }

  @Test
  void twoHolesWithOneLabelAreRefused() {
    Plan good = ToyPlan.good();
    refused(
        ToyPlan.with(
            good,
            List.of(
                good.holes().get(0),
                ToyPlan.hole(
                    "east/top/1000",
                    "H1",
                    p(4057, 1000, 2362),
                    "east/bay-800",
                    List.of(ToyPlan.RUN))),
            good.works()),
        0,
        "has the label H1 too");
  }

  @Test
  void aHoleTooSmallForItsCablesIsRefused() {
    List<String> three = List.of("cat6", "cat6", "cat6");
    Verdict small = Referee.check(ToyPlan.good(three), ToyHouse.build(), ToyPlan.request(three));
    assertSays(small, 0, "too small for [cat6, cat6, cat6]");
  }

  @Test
  void aPullHeadThatDoesNotPassIsRefused() {
    List<String> lead = List.of("om4", "om4");
    Verdict small = Referee.check(ToyPlan.good(lead), ToyHouse.build(), ToyPlan.request(lead));
    assertSays(small, 0, "too small for [om4, om4]");
  }

  @Test
  void aBitBeyondTheLawIsRefused() {
    refused(withDiameter(38), 0, "more than the 32 mm allowed");
  }

  @Test
  void aWideBitNeedsANailPlate() {
    Plan wide = withDiameter(32);
    refused(wide, 0, "without a nail plate");
    Plan plated =
        wide.withFindings(
            List.of(
                new Plan.FindingLine(
                    "nail-plate",
                    "practice",
                    java.util.Optional.of(p(-57, 1000, 2362)),
                    "NEC 300.4(A)(1)",
                    "")));
    assertTrue(judge(plated).stream().noneMatch(r -> r.text().contains("without a nail plate")));
  }

  private static Plan withDiameter(int mm) {
    Plan good = ToyPlan.good();
    return ToyPlan.with(
        good,
        List.of(
            ToyPlan.hole(
                "west/top/1000",
                "H1",
                p(-57, 1000, 2362),
                "west/bay-800",
                List.of(ToyPlan.RUN),
                mm,
                1),
            good.holes().get(1)),
        good.works());
  }

  @Test
  void aRunThatEndsElsewhereIsRefused() {
    refused(
        ToyPlan.withStep(
            ToyPlan.good(),
            4,
            fish("east/bay-800", 2, 6.524, p(4057, 1000, 2324), p(4057, 1000, 800))),
        5,
        "but desk is at");
    refused(
        ToyPlan.withStep(
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
  void aFishLongerThanItsLimitIsRefused() {
    Verdict filled = Referee.check(ToyPlan.good(), ToyHouse.build(Fill.FOAM), ToyPlan.request());
    assertSays(filled, 1, "nobody can fish a stud bay filled with foam");
  }

  @Test
  void aFishThatTurnsBackIsRefused() {
    refused(
        ToyPlan.withStep(
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
    refused(
        ToyPlan.withStep(
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
    refused(sideways(1, 1, 1), 5, "handed over 2 times");
  }

  @Test
  void aFishThatEndsInTheDarkIsRefused() {
    refused(sideways(1, 2, 2), 1, "no hand is there");
  }

  @Test
  void aHandedOverFishWithAPatchBetweenStands() {
    Plan plan = sideways(1, 1, 2);
    refused(plan, 3, "no hand is there");
    Plan patched =
        ToyPlan.withSteps(
            plan,
            s -> {
              s.set(2, fish("west/bay-1200", 1, 13.362, p(-57, 1219, 1000), p(-57, 1400, 1000)));
              s.add(3, access("west/bay-1200/patch", p(-57, 1400, 1000)));
              s.add(4, fish("west/bay-1200", 2, 5, p(-57, 1400, 1000), p(-57, 1581, 1000)));
              return s;
            });
    List<Plan.PlannedWork> works = new ArrayList<>(patched.works());
    works.add(new Plan.PlannedWork("west/bay-1200/patch", "patch", 55, 1, 1, ""));
    Plan opened = ToyPlan.with(patched, patched.holes(), works);
    assertTrue(
        judge(opened).stream().noneMatch(r -> r.text().contains("no hand")),
        judge(opened)::toString);
  }

  /** Cabinet bay, through two studs, with the given fish numbers for the three bays. */
  private static Plan sideways(int... fishes) {
    return ToyPlan.withSteps(
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
    refused(
        ToyPlan.withStep(
            ToyPlan.good(), 4, laid("east/bay-800", 1, p(4057, 1000, 2324), p(4057, 1000, 400))),
        5,
        "belongs to no fish");
  }

  @Test
  void aFishEndingWhereNoBoxIsCutIsRefused() {
    refused(without("desk/cut-out"), 5, "no cut-out is opened");
  }

  @Test
  void anAtticNobodySetsUpIsRefused() {
    refused(without("zone/attic"), 3, "no work sets up the zone attic");
  }

  @Test
  void aHoleNobodyBoresIsRefused() {
    refused(without("west/top/1000/bore"), 0, "which the plan does not open");
  }

  private static Plan without(String work) {
    Plan good = ToyPlan.good();
    return ToyPlan.with(
        good, good.holes(), good.works().stream().filter(w -> !w.id().equals(work)).toList());
  }

  @Test
  void aFalseSumIsRefused() {
    Plan good = ToyPlan.good();
    Plan.Totals t = good.totals();
    refused(
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
    refused(
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
    refused(
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
    refused(
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

  @Test
  void aRunNobodyAskedForIsRefused() {
    Verdict v =
        Referee.check(ToyPlan.good(List.of("cat6", "cat6")), ToyHouse.build(), ToyPlan.request());
    assertSays(v, 0, "nobody asked for this run");
  }

  private static List<Refusal> judge(Plan plan) {
    return Referee.check(plan, ToyHouse.build(), ToyPlan.request()).refusals();
  }

  private static void refused(Plan plan, int step, String text) {
    assertSays(Referee.check(plan, ToyHouse.build(), ToyPlan.request()), step, text);
  }

  private static void assertSays(Verdict verdict, int step, String text) {
    assertTrue(
        verdict.refusals().stream().anyMatch(r -> r.step() == step && r.text().contains(text)),
        () -> "expected '" + text + "' at step " + step + ", got " + verdict.refusals());
  }
}
