package holloway.report;

import holloway.plan.Plan;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/**
 * Findings by how binding they are, law first; what differs by its hole or run only is said once.
 */
final class FindingsSection {
  private static final List<String> ORDER = List.of("law", "standard", "practice", "note");

  private FindingsSection() {}

  /** What is broken first within each severity. */
  static void write(List<Plan.FindingLine> findings, UnaryOperator<String> words, Page page) {
    page.title("FINDINGS");
    for (String severity : ORDER) {
      for (boolean broken : List.of(true, false)) {
        Map<String, List<Plan.FindingLine>> alike = new LinkedHashMap<>();
        findings.stream()
            .filter(f -> f.severity().equals(severity) && f.broken() == broken)
            .forEach(
                f -> alike.computeIfAbsent(AlikeFindings.key(f), k -> new ArrayList<>()).add(f));
        alike.values().forEach(group -> new AlikeFindings(group, words).write(page));
      }
    }
    page.put(
        "  ",
        findings.isEmpty()
            ? "None."
            : "Your local code decides on all of these; BROKEN marks what the plan goes against,"
                + " the rest is to be done or known.");
  }
}
