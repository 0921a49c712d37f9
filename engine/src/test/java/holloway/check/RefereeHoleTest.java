package holloway.check;

import static holloway.check.Judged.assertRefused;
import static holloway.check.Judged.judge;
import static holloway.check.ToySteps.p;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Holes are used, told apart, wide enough for their cables and no wider than is allowed. */
class RefereeHoleTest {
  @Test
  void aHoleThatNobodyPassesIsRefused() {
    Plan good = ToyPlan.good();
    List<Plan.PlannedHole> holes = new ArrayList<>(good.holes());
    holes.add(ToyPlan.hole("west/top/1400", "H3", p(-57, 1400, 2362), "west/bay-1200", List.of()));
    assertRefused(Spoiled.with(good, holes, good.works()), 0, "no run passes");
  }

  @Test
  void twoHolesWithOneLabelAreRefused() {
    Plan good = ToyPlan.good();
    assertRefused(
        Spoiled.with(
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
    Verdict small = Referee.check(ToyPlan.good(three), ToyHouse.build(), ToyRequest.of(three));
    Judged.says(small, 0, "too small for [cat6, cat6, cat6]");
  }

  @Test
  void aPullHeadThatDoesNotPassIsRefused() {
    List<String> lead = List.of("om4", "om4");
    Verdict small = Referee.check(ToyPlan.good(lead), ToyHouse.build(), ToyRequest.of(lead));
    Judged.says(small, 0, "too small for [om4, om4]");
  }

  @Test
  void aBitBeyondTheLawIsRefused() {
    assertRefused(Spoiled.withBit(38), 0, "more than the 32 mm allowed");
  }

  @Test
  void aWideBitNeedsANailPlate() {
    Plan wide = Spoiled.withBit(32);
    assertRefused(wide, 0, "without a nail plate");
    Plan plated =
        wide.withFindings(
            List.of(
                new Plan.FindingLine(
                    "nail-plate",
                    "practice",
                    Optional.of(p(-57, 1000, 2362)),
                    "NEC 300.4(A)(1)",
                    "")));
    assertTrue(judge(plated).stream().noneMatch(r -> r.text().contains("without a nail plate")));
  }
}
