package holloway.report;

import holloway.plan.Plan;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Where the hours go: works by the place a person stands, and the cable itself. */
final class HoursSection {
  private static final int WIDE = 42;

  private final Sheet sheet;
  private final Page page;

  HoursSection(Sheet sheet, Page page) {
    this.sheet = sheet;
    this.page = page;
  }

  void write() {
    Plan plan = sheet.plan();
    page.title("HOURS");
    HouseWords words = new HouseWords(sheet.placed());
    Map<String, String> stands = new HashMap<>();
    plan.holes().forEach(h -> h.works().forEach(w -> stands.putIfAbsent(w, words.stand(h))));
    Map<String, double[]> byPlace = new TreeMap<>();
    double works = 0;
    for (Plan.PlannedWork w : plan.works()) {
      double[] sum = byPlace.computeIfAbsent(place(w, stands), p -> new double[2]);
      sum[0]++;
      sum[1] += w.minutes();
      works += w.minutes();
    }
    byPlace.forEach((place, sum) -> row(place, UnitWords.count((long) sum[0], "work"), sum[1]));
    double dislike = sheet.dislike();
    double all = plan.totals().minutes();
    row("drawing, fishing, laying", "", all - works - dislike);
    row("work in all", "", all - dislike);
    if (dislike > 0) {
      row("dislike of cable in sight, no work", "", dislike);
      row("minutes counted by the plan", "", all);
    }
    page.put("  ", source());
  }

  private static String place(Plan.PlannedWork w, Map<String, String> stands) {
    return w.kind().equals("cut-out")
        ? word(w.kind())
        : w.zone().isEmpty()
            ? stands.getOrDefault(w.id(), word(w.kind()))
            : HouseWords.zone(w.zone());
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
    String name = place;
    if (name.length() > WIDE) {
      List<String> lines = Page.wrap(name, WIDE);
      lines.subList(0, lines.size() - 1).forEach(l -> page.line("  " + l));
      name = "  " + lines.get(lines.size() - 1);
    }
    page.line("  %-44s %-9s %12s".formatted(name, works, UnitWords.minutes(minutes)));
  }
}
