package holloway.check;

import static holloway.check.ToySteps.p;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.plan.Plan;
import holloway.request.Request;
import holloway.request.Wishes;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Prices worked out by hand from the toy's effort table, then told falsely. */
class PriceRuleTest {
  @Test
  void aFishPaysItsSetUpOnceAndEachMetre() {
    assertEquals(List.of(), refusals(ToyPlan.good(), ToyRequest.of()));
    refused(
        Spoiled.withStep(
            ToyPlan.good(),
            4,
            ToySteps.fish("east/bay-800", 2, 1.924, p(4057, 1000, 2324), p(4057, 1000, 400))),
        5,
        "says 1.9240 min, by the effort table it is 6.9240");
  }

  @Test
  void aLaidLegPaysItsMetres() {
    refused(
        Spoiled.withStep(
            ToyPlan.good(),
            2,
            ToySteps.laid(
                "attic",
                4.0,
                p(-57, 1000, 2400),
                p(-57, 1000, 2500),
                p(4057, 1000, 2500),
                p(4057, 1000, 2400))),
        3,
        "it is 4.3140");
  }

  @Test
  void onePersonAloneFishesLonger() {
    Request asked = ToyRequest.of();
    Wishes alone =
        new Wishes(
            java.util.Optional.empty(),
            30,
            Wishes.Season.SUMMER,
            List.of(),
            List.of(),
            asked.wishes().profile(),
            1);
    Request one =
        new Request(asked.cabinet(), asked.outlets(), asked.runs(), alone, asked.effort());
    List<Refusal> said = refusals(ToyPlan.good(), one);
    assertTrue(
        said.stream().anyMatch(r -> r.step() == 5 && r.text().contains("it is 9.6936")),
        said::toString);
    assertTrue(said.stream().anyMatch(r -> r.place().equals("zone/attic")), said::toString);
  }

  @Test
  void aWorkToldCheaperIsRefused() {
    refused(priced("east/top/1000/bore", 15.0), 0, "by the effort table it is 15.5000");
    refused(priced("zone/attic", 20), 0, "no price of [zone.attic]");
    refused(priced("desk/cut-out", 9), 0, "which is no price of it: [10.0]");
  }

  @Test
  void aWiderBitPaysItsSteps() {
    Plan good = ToyPlan.good();
    Plan wide =
        Spoiled.with(
            good,
            List.of(
                ToyPlan.hole(
                    "west/top/1000",
                    "H1",
                    p(-57, 1000, 2362),
                    "west/bay-800",
                    List.of(ToyPlan.RUN),
                    19,
                    1),
                good.holes().get(1)),
            good.works());
    refused(wide, 0, "it is 16.5000");
  }

  @Test
  void visibleMetresAreCountedAgain() {
    Plan good = ToyPlan.good();
    Plan.Totals t = good.totals();
    Plan hidden =
        good.withRuns(
            good.runs(),
            new Plan.Totals(
                t.objective(),
                t.bound(),
                t.gap(),
                t.minutes(),
                t.holes(),
                t.patches(),
                t.routeM(),
                t.cableM(),
                1.5,
                t.money(),
                "USD",
                t.zones()));
    refused(hidden, 0, "says 1.500, the legs in sight make 0.000");
  }

  private static Plan priced(String work, double minutes) {
    Plan good = ToyPlan.good();
    List<Plan.PlannedWork> works = new ArrayList<>();
    for (Plan.PlannedWork w : good.works()) {
      works.add(
          w.id().equals(work)
              ? new Plan.PlannedWork(w.id(), w.kind(), minutes, w.holes(), w.patches(), w.zone())
              : w);
    }
    return Spoiled.with(good, good.holes(), works);
  }

  private static List<Refusal> refusals(Plan plan, Request request) {
    return Referee.check(plan, ToyHouse.build(), request).refusals();
  }

  private static void refused(Plan plan, int step, String text) {
    List<Refusal> said = refusals(plan, ToyRequest.of());
    assertTrue(
        said.stream().anyMatch(r -> r.step() == step && r.text().contains(text)), said::toString);
  }
}
