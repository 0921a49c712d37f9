package holloway.report;

import holloway.plan.Plan;
import holloway.takeoff.TaskMinutes;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

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
    PlainWords words = sheet.words();
    plan.holes().forEach(h -> h.works().forEach(w -> stands.putIfAbsent(w, words.stand(h))));
    Map<String, double[]> byPlace = new TreeMap<>();
    double works = 0;
    for (Plan.PlannedWork w : plan.works()) {
      String place = w.zone().isEmpty() ? place(w, stands) : setUp(w.zone());
      double[] sum = byPlace.computeIfAbsent(place, p -> new double[2]);
      sum[0]++;
      sum[1] += w.minutes();
      works += w.minutes();
    }
    byPlace.forEach((place, sum) -> row(place, UnitWords.count((long) sum[0], "work"), sum[1]));
    double dislike = sheet.request().wishes().visibleMetre() * plan.totals().visibleM();
    row("drawing, fishing, laying", "", plan.totals().minutes() - works - dislike);
    if (dislike >= 0.5) {
      row("dislike of cable in sight (no work)", "", dislike);
    }
    row("in all", "", plan.totals().minutes());
    if (!TaskMinutes.of(plan).isEmpty()) {
      page.put("  ", "By kind of task: " + tasks(plan) + ".");
    }
    page.put("  ", source());
  }

  private static String tasks(Plan plan) {
    return TaskMinutes.of(plan).stream()
        .map(t -> t.task() + " " + UnitWords.minutes(t.minutes()))
        .collect(Collectors.joining(", "));
  }

  /** A cut-out is the outlet's own work even where a hole is bored through it. */
  private static String place(Plan.PlannedWork w, Map<String, String> stands) {
    return w.kind().equals("cut-out")
        ? word(w.kind())
        : stands.getOrDefault(w.id(), word(w.kind()));
  }

  private static String setUp(String zone) {
    return switch (zone) {
      case "attic" -> "getting set up in the attic";
      case "attic-low" -> "getting set up in another attic";
      case "crawlspace", "cellar" -> "getting set up in the " + zone;
      case "ladder" -> "setting up the ladder";
      default -> "getting set up: " + zone;
    };
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
      case "access" -> "opening what comes off";
      case "channel" -> "channels in masonry";
      default -> "other works";
    };
  }

  private void row(String place, String works, double minutes) {
    String end = "%-8s %12s".formatted(works, UnitWords.minutes(minutes));
    int wide = Page.WIDTH - end.length() - 3;
    List<String> lines = Page.wrap(place, wide);
    for (String line : lines.subList(0, lines.size() - 1)) {
      page.line("  " + line);
    }
    page.line(("  %-" + wide + "s %s").formatted(lines.get(lines.size() - 1), end));
  }
}
