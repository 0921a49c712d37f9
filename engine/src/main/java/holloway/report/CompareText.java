package holloway.report;

import holloway.plan.Plan;
import holloway.units.UnitSystem;
import java.util.List;

/** Ways of working side by side: a table, then what each wins and loses against the first. */
public final class CompareText {
  private CompareText() {}

  public static String of(List<Way> ways, UnitSystem system, Ink ink) {
    UnitWords units = new UnitWords(system);
    Page page = new Page(ink);
    Plan first = ways.get(0).plan();
    page.title(first.house() + ": ways of working");
    page.line(
        "  %-20s %10s %6s %8s %11s %8s %8s"
            .formatted("", "minutes", "holes", "patches", "cable", "gap", "no route"));
    ways.forEach(w -> row(w, units, page));
    if (ways.stream().anyMatch(w -> !w.plan().unrouted().isEmpty())) {
      page.put("  * ", "leaves runs without a route, so its amounts are for fewer runs");
    }
    if (ways.stream().anyMatch(w -> w.plan().totals().visibleM() > 0)) {
      page.put("    ", "the minutes hold your dislike of cable in sight, which is no work");
    }
    if (ways.stream().anyMatch(w -> w.plan().totals().cutByTime())) {
      page.put("    ", "time ended some of the searches; another time plans may be other ones");
    }
    for (Way way : ways) {
      page.title(way.name().toUpperCase(java.util.Locale.ROOT));
      details(way, first, units, page);
    }
    return page.text();
  }

  private static void row(Way way, UnitWords units, Page page) {
    Plan.Totals t = way.plan().totals();
    page.line(
        "  %-20s %10s %6d %8d %11s %8s %8s"
            .formatted(
                way.name(),
                UnitWords.minutes(t.minutes()),
                t.holes(),
                t.patches(),
                units.cut(t.cableM()),
                HeadSection.percent(t.gap()),
                way.plan().unrouted().isEmpty() ? "-" : way.plan().unrouted().size() + " *"));
  }

  private static void details(Way way, Plan first, UnitWords units, Page page) {
    if (!way.sameAs().isEmpty()) {
      page.put("  the same  ", "as " + String.join(", ", way.sameAs()));
    }
    if (!way.plan().unrouted().isEmpty()) {
      List<String> ids = way.plan().unrouted().stream().map(Plan.Unrouted::id).toList();
      page.put("  * no route ", 12, String.join(", ", ids));
    }
    List<String> zones = way.plan().totals().zones();
    page.put("  sets up   ", zones.isEmpty() ? "nothing but the rooms" : String.join(", ", zones));
    double seen = way.plan().totals().visibleM();
    if (seen > 0) {
      page.put("  in sight  ", units.cable(seen));
    }
    if (way.plan() == first) {
      return;
    }
    WinsAndLosses w = WinsAndLosses.of(way.plan(), first, units);
    page.put("  wins      ", w.wins().isEmpty() ? "nothing" : String.join(", ", w.wins()));
    page.put("  loses     ", w.loses().isEmpty() ? "nothing" : String.join(", ", w.loses()));
  }
}
