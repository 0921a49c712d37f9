package holloway.takeoff;

import holloway.plan.Plan;
import holloway.request.Request;
import holloway.survey.Placed;
import java.util.List;

/** Fills a plan's cut lengths and materials. */
public final class TakeOff {
  private TakeOff() {}

  /** The same plan with {@code cable-m} of each run, its total, and the list of materials. */
  public static Plan of(Plan plan, Request request, Placed placed) {
    List<Plan.PlannedRun> runs = plan.runs().stream().map(TakeOff::cut).toList();
    double cable = runs.stream().mapToDouble(Plan.PlannedRun::cableM).sum();
    Plan.Totals t = plan.totals();
    Plan.Totals totals =
        new Plan.Totals(
            t.objective(),
            t.bound(),
            t.gap(),
            t.minutes(),
            t.holes(),
            t.patches(),
            t.routeM(),
            Math.round(cable * 1000) / 1000.0,
            t.visibleM(),
            t.money(),
            t.currency(),
            t.zones(),
            t.cutByTime());
    Plan cut = plan.withRuns(runs, totals);
    return cut.withMaterials(new Materials(request, placed).of(cut));
  }

  private static Plan.PlannedRun cut(Plan.PlannedRun r) {
    return new Plan.PlannedRun(
        r.id(), r.from(), r.to(), r.cable(), r.routeM(), CutLength.of(r).metres(), r.steps());
  }
}
