package holloway.report;

import holloway.catalog.PriceList;
import holloway.plan.Plan;
import holloway.survey.Placed;
import holloway.units.UnitSystem;
import java.util.List;

/** Several routes of one run, each with what it takes and where it goes. */
public final class RoutesText {
  private RoutesText() {}

  public static String of(
      String run, Placed placed, List<Plan> routes, UnitSystem system, Ink ink) {
    UnitWords units = new UnitWords(system);
    Page page = new Page(ink);
    page.title(run + ": " + UnitWords.count(routes.size(), "route") + ", planned on its own");
    for (int i = 0; i < routes.size(); i++) {
      route(i + 1, routes.get(i), placed, units, page);
    }
    return page.text();
  }

  private static void route(int number, Plan plan, Placed placed, UnitWords units, Page page) {
    Plan.Totals t = plan.totals();
    page.title(
        "%d  %s, %s, %s"
            .formatted(
                number,
                UnitWords.minutes(t.minutes()),
                UnitWords.count(t.holes(), "hole"),
                units.cable(t.routeM())));
    for (Plan.PlannedRun r : plan.runs()) {
      page.put("   ", new RunsSection(plan, placed, PriceList.NONE, false, units, page).way(r));
    }
    for (Plan.PlannedHole h : plan.holes()) {
      page.put(
          "   %-4s ".formatted(h.label()),
          "%s %s, %s%s"
              .formatted(
                  h.kind(),
                  units.bit(h.diameterMm()),
                  HouseWords.plain(h.method()),
                  h.assumed() ? "; " + HouseWords.findFirst(h.kind()) : ""));
    }
  }
}
