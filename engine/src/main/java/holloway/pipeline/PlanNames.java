package holloway.pipeline;

import holloway.plan.Plan;
import holloway.report.PlaceWords;
import holloway.request.Request;
import holloway.routing.Routing;
import holloway.solve.Solved;
import holloway.survey.Placed;
import java.util.List;

/** Gives a plan as the search wrote it what it knows of the house: name, currency, why not. */
record PlanNames(Placed placed, Request request, Routing.Routed on) {
  /** With the reason why each run that has no route has none. */
  Plan of(Plan written, Solved solved) {
    return of(written).withUnrouted(unrouted(solved));
  }

  Plan of(Plan written) {
    Plan p = new Labour(on.money(), on.graph()).of(written);
    Plan.Totals t = p.totals();
    Plan.Totals totals =
        new Plan.Totals(
            t.objective(),
            t.bound(),
            t.gap(),
            t.minutes(),
            t.holes(),
            t.patches(),
            t.routeM(),
            t.cableM(),
            t.visibleM(),
            t.money(),
            currency(),
            t.zones(),
            t.cutByTime());
    return new Plan(
        p.format(),
        placed.house().name(),
        p.profile(),
        p.perMinute(),
        p.inputs(),
        totals,
        p.runs(),
        p.holes(),
        p.unrouted(),
        p.works(),
        p.findings(),
        p.materials(),
        p.survey(),
        placed.site());
  }

  private List<Plan.Unrouted> unrouted(Solved solved) {
    PlaceWords places = new PlaceWords(placed);
    return solved.plan().unrouted().stream()
        .map(
            u -> {
              List<String> reached = solved.reached().getOrDefault(u.id(), List.of());
              return new Plan.Unrouted(u.id(), WhyNot.of(u.id(), request, places, on, reached));
            })
        .toList();
  }

  /** The currency of the hour's worth, else that of the place. */
  private String currency() {
    return request
        .wishes()
        .hourIsWorth()
        .map(m -> m.currency())
        .orElseGet(
            () ->
                switch (placed.house().place()) {
                  case US -> "USD";
                  case UK -> "GBP";
                  case EU, NONE -> "";
                });
  }
}
