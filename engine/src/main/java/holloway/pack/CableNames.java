package holloway.pack;

import holloway.report.Sheet;
import holloway.schedule.Label;
import holloway.schedule.Labels;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Cables as somebody with a bundle in hand knows them: a few by name, many by what is printed on
 * their ends. The table of ports says which is which.
 */
final class CableNames {
  /** So many names are taken in at a glance; from experience. */
  private static final int FEW = 3;

  private final Map<String, String> labels;

  CableNames(Sheet sheet) {
    this.labels =
        Labels.of(sheet.plan(), sheet.request(), sheet.placed()).stream()
            .collect(Collectors.toMap(Label::run, Label::id, (a, b) -> a));
  }

  /** What is printed on both ends of a run. */
  String label(String run) {
    return labels.getOrDefault(run, run);
  }

  /** How many, where they are many, and which: no word of it belongs to a language. */
  Map<String, Object> of(List<String> runs) {
    Map<String, Object> out = new LinkedHashMap<>();
    boolean many = runs.size() > FEW;
    out.put("many", many ? runs.size() : null);
    out.put(
        "names",
        runs.stream()
            .sorted(Comparator.comparing(this::label))
            .map(r -> many ? label(r) : r + " (" + label(r) + ")")
            .collect(Collectors.joining(", ")));
    return out;
  }
}
