package holloway.report;

import holloway.plan.Plan;
import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;

/** Where the hours go: works by the place a person stands, and the cable itself. */
final class HoursSection {
  private final Sheet sheet;
  private final Page page;

  HoursSection(Sheet sheet, Page page) {
    this.sheet = sheet;
    this.page = page;
  }

  void write() {
    Plan plan = sheet.plan();
    page.title("HOURS");
    Map<String, String> stands = new HashMap<>();
    plan.holes()
        .forEach(h -> h.works().forEach(w -> stands.putIfAbsent(w, StandWords.of(h.stand()))));
    Map<String, double[]> byPlace = new TreeMap<>();
    double works = 0;
    for (Plan.PlannedWork w : plan.works()) {
      String place = w.zone().isEmpty() ? stands.getOrDefault(w.id(), word(w.kind())) : w.zone();
      double[] sum = byPlace.computeIfAbsent(place, p -> new double[2]);
      sum[0]++;
      sum[1] += w.minutes();
      works += w.minutes();
    }
    byPlace.forEach((place, sum) -> row(place, UnitWords.count((long) sum[0], "work"), sum[1]));
    row("drawing, fishing, laying", "", plan.totals().minutes() - works);
    row("in all", "", plan.totals().minutes());
    page.put("  ", source());
  }

  private String source() {
    return sheet.request().effort().overridden()
        ? "Minutes are from your effort file where it has them; the others are our own"
            + " experience, no published source."
        : "Minutes are our own experience, no published source (edit the effort file).";
  }

  private static String word(String kind) {
    return switch (kind) {
      case "cut-out" -> "outlet cut-outs";
      case "patch" -> "patches";
      case "access" -> "opening accesses";
      case "channel" -> "channels in masonry";
      default -> "other works";
    };
  }

  private void row(String place, String works, double minutes) {
    int wide = 40;
    String name = place.length() > wide ? place.substring(0, wide - 3) + "..." : place;
    page.line("  %-40s %-12s %12s".formatted(name, works, UnitWords.minutes(minutes)));
  }
}
