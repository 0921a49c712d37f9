package holloway.report;

import holloway.catalog.PriceList;
import holloway.plan.Plan;
import holloway.survey.Placed;
import holloway.takeoff.Coil;
import holloway.takeoff.CutLength;
import holloway.takeoff.Jackets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Every run: its length, what to cut, and the way it goes. */
final class RunsSection {
  private final Plan plan;
  private final PriceList prices;
  private final Map<String, String> jackets;
  private final HouseWords words;
  private final boolean steps;
  private final UnitWords units;
  private final Page page;

  RunsSection(Sheet sheet, Page page) {
    this(
        sheet.plan(), sheet.placed(), sheet.request().prices(), sheet.steps(), sheet.units(), page);
  }

  RunsSection(
      Plan plan, Placed placed, PriceList prices, boolean steps, UnitWords units, Page page) {
    this.prices = prices;
    this.plan = plan;
    this.jackets = Jackets.changed(plan, placed.house().ownRules());
    this.words = new HouseWords(placed);
    this.steps = steps;
    this.units = units;
    this.page = page;
  }

  void write() {
    page.title("RUNS");
    Map<String, String> told = new HashMap<>();
    for (Plan.PlannedRun run : plan.runs()) {
      page.put("  ", 6, run.id() + ": " + lengths(run));
      if (steps) {
        run.steps().forEach(this::step);
      } else {
        String first = told.putIfAbsent(way(run), run.id());
        page.put("      ", first == null ? way(run) : "the same way as " + first);
      }
    }
    page.put("  ", "'Open in' a room: on its surface, where you said that it may show.");
    page.put("  ", "Cut lengths hold the slack at both ends: " + slack() + loops());
  }

  private static String slack() {
    return "300 mm at a copper outlet, 1 m at a fibre outlet, 3 m at the cabinet (BICSI practice,"
        + " not a TIA rule).";
  }

  /** Of what goes to another building. */
  private String loops() {
    boolean link =
        plan.runs().stream()
            .flatMap(r -> r.steps().stream())
            .anyMatch(s -> s.id().startsWith("conduit/") && s.id().contains("/outdoor-"));
    return link ? " 300 mm more for a drip loop at each end of a link between buildings." : "";
  }

  /** Route and what to cut, or which ready-made lead to take and where its surplus is coiled. */
  String lengths(Plan.PlannedRun run) {
    CutLength cut = CutLength.of(run, prices);
    String bought = jackets.containsKey(run.id()) ? ", bought as " + jackets.get(run.id()) : "";
    String route = units.cable(run.routeM()) + " of " + run.cable() + bought + ", ";
    if (cut.lead().isEmpty()) {
      return route + "cut " + units.cut(run.cableM());
    }
    Coil coil = Coil.of(run, cut);
    String turns =
        coil.turns() == 0 ? "" : " (" + UnitWords.count(coil.turns(), "turn") + " 300 mm across)";
    return "%sa ready-made lead of %d m, %s over: coil it at %s%s, never tighter than %.0f mm radius"
        .formatted(
            route,
            cut.lead().getAsInt(),
            units.cable(cut.surplusM()),
            coil.at().equals("cabinet") ? "the cabinet" : coil.at(),
            turns,
            coil.leastRadiusMm());
  }

  /** The way in words: hollows with their lengths, holes by label. */
  String way(Plan.PlannedRun run) {
    List<String> way = new ArrayList<>();
    way.add(run.from());
    String hollow = "";
    double m = 0;
    for (Plan.PlanStep s : run.steps()) {
      boolean leg = s.kind().equals("leg");
      String next = leg ? words.leg(s) : "";
      if (m > 0 && !next.equals(hollow)) {
        way.add(hollow + " " + units.cable(m));
        m = 0;
      }
      if (leg) {
        hollow = next;
        m += s.m();
      } else {
        way.add(s.label().orElseGet(() -> words.crossing(s)));
      }
    }
    if (m > 0) {
      way.add(hollow + " " + units.cable(m));
    }
    way.add(run.to());
    return String.join(" > ", way);
  }

  private void step(Plan.PlanStep s) {
    if (s.kind().equals("leg")) {
      String fish = s.fish().map(f -> ", fish " + f).orElse("");
      String feed =
          s.feed().map(f -> f.equals("blind") ? ", blind" + fish : ", by hand").orElse("");
      page.put("      %11s  ".formatted(units.cable(s.m())), words.leg(s) + feed);
    } else {
      String what = s.label().orElseGet(() -> words.crossing(s));
      page.put("      %11s  ".formatted(""), "through " + what);
    }
  }
}
