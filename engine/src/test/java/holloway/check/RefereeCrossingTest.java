package holloway.check;

import static holloway.check.Judged.assertRefused;
import static holloway.check.ToySteps.bore;
import static holloway.check.ToySteps.fish;
import static holloway.check.ToySteps.p;

import holloway.plan.Plan;
import org.junit.jupiter.api.Test;

/** A crossing is one of the house, stands on its axis and joins the hollows beside it. */
class RefereeCrossingTest {
  @Test
  void anUnknownCrossingIsRefused() {
    assertRefused(
        Spoiled.withStep(
            ToyPlan.good(), 1, bore("west/top/1001", "H1", p(-57, 1000, 2324), p(-57, 1000, 2400))),
        2,
        "neither a crossing");
  }

  @Test
  void aShiftedCrossingIsRefused() {
    assertRefused(
        Spoiled.withSteps(
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
    assertRefused(
        Spoiled.withStep(
            ToyPlan.good(),
            0,
            fish("west/bay-1200", 1, 6.124, p(-57, 1000, 1200), p(-57, 1000, 2324))),
        2,
        "opens into west/bay-800");
  }

  @Test
  void aHoleThatIsNotListedIsRefused() {
    Plan good = ToyPlan.good();
    assertRefused(
        Spoiled.with(good, good.holes().subList(1, 2), good.works()),
        2,
        "not among the plan's holes");
  }

  @Test
  void aCrossingWithAnotherHolesLabelIsRefused() {
    assertRefused(
        Spoiled.withStep(
            ToyPlan.good(), 1, bore("west/top/1000", "H2", p(-57, 1000, 2324), p(-57, 1000, 2400))),
        2,
        "is labelled H2, the hole is H1");
  }
}
