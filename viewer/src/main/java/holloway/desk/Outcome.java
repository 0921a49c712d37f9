package holloway.desk;

import holloway.plan.Plan;
import holloway.report.SeenWords;
import holloway.view.TwoWays;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * What judging made of a sketch.
 *
 * @param lines what differs, in words; empty when it is as it was sketched
 */
record Outcome(List<String> lines) {
  private static final Set<String> TOLD = Set.of("work", "holes", "patches");
  private static final int MOST_NAMED = 3;

  Outcome {
    lines = List.copyOf(lines);
  }

  static Outcome of(Plan sketch, Plan judged, SeenWords words) {
    TwoWays ways = new TwoWays(sketch, judged, words);
    List<String> out = new ArrayList<>();
    for (TwoWays.Row r : ways.rows()) {
      if (TOLD.contains(r.name()) && !r.more().contains("the same")) {
        out.add(r.name() + " " + r.more());
      }
    }
    List<String> runs = List.copyOf(ways.runsThatDiffer());
    if (!runs.isEmpty()) {
      String named = String.join(", ", runs.subList(0, Math.min(MOST_NAMED, runs.size())));
      String more = runs.size() > MOST_NAMED ? " and " + (runs.size() - MOST_NAMED) + " more" : "";
      out.add("another way: " + named + more);
    }
    if (!out.isEmpty()) {
      out.add(0, "Judged, and not as it was sketched:");
    }
    return new Outcome(out);
  }

  boolean isAsSketched() {
    return lines.isEmpty();
  }

  String inShort() {
    return isAsSketched() ? "judged: as it was sketched" : "judged: not as sketched, see the list";
  }
}
