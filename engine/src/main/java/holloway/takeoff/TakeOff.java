package holloway.takeoff;

import holloway.catalog.PriceList;
import holloway.plan.Plan;
import holloway.request.Request;
import holloway.survey.Placed;
import java.util.List;
import java.util.Optional;

/** Fills a plan's cut lengths, materials and, with a price file, its money. */
public final class TakeOff {
  private TakeOff() {}

  /** The same plan with {@code cable-m} of each run, its total, and the list of materials. */
  public static Plan of(Plan plan, Request request, Placed placed) {
    return of(plan, request, placed, HoleNeeds.NONE);
  }

  /** With what is known of the holes. */
  public static Plan of(Plan plan, Request request, Placed placed, HoleNeeds needs) {
    PriceList prices = request.prices();
    List<Plan.PlannedRun> runs = plan.runs().stream().map(r -> cut(r, prices)).toList();
    double cable = runs.stream().mapToDouble(Plan.PlannedRun::cableM).sum();
    Plan cut = plan.withRuns(runs, totals(plan.totals(), cable, Optional.empty(), ""));
    List<Plan.Material> materials = new Materials(request, placed, needs).of(cut);
    Plan listed = cut.withMaterials(materials);
    if (!prices.stated()) {
      return listed;
    }
    double money = sum(materials);
    return listed.withRuns(
        runs, totals(plan.totals(), cable, Optional.of(money), prices.currency()));
  }

  /** Ports of each patch panel that is bought, in the order of their letters. */
  public static List<Integer> panels(Plan plan) {
    return CabinetParts.panels(plan);
  }

  /** Lines without a price are left out of it. */
  private static double sum(List<Plan.Material> materials) {
    double cents =
        materials.stream()
            .flatMap(m -> m.price().stream())
            .mapToDouble(p -> Math.round(p * 100))
            .sum();
    return cents / 100;
  }

  /** The money of all materials; what of it hangs on the routes is in the objective already. */
  private static Plan.Totals totals(
      Plan.Totals t, double cable, Optional<Double> money, String currency) {
    return new Plan.Totals(
        t.objective(),
        t.bound(),
        t.gap(),
        t.minutes(),
        t.holes(),
        t.patches(),
        t.routeM(),
        Math.round(cable * 1000) / 1000.0,
        t.visibleM(),
        money.or(t::money),
        money.isPresent() ? currency : t.currency(),
        t.zones(),
        t.cutByTime());
  }

  private static Plan.PlannedRun cut(Plan.PlannedRun r, PriceList prices) {
    double metres = CutLength.of(r, prices).metres();
    return new Plan.PlannedRun(r.id(), r.from(), r.to(), r.cable(), r.routeM(), metres, r.steps());
  }
}
