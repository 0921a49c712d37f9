package holloway.report;

import holloway.plan.Plan;
import java.util.List;

/** Findings by how binding they are, law first. */
final class FindingsSection {
  private static final List<String> ORDER = List.of("law", "standard", "practice", "note");

  private FindingsSection() {}

  static void write(List<Plan.FindingLine> findings, Page page) {
    page.title("FINDINGS");
    for (String severity : ORDER) {
      findings.stream().filter(f -> f.severity().equals(severity)).forEach(f -> line(f, page));
    }
    if (findings.isEmpty()) {
      page.put("  ", "None.");
    }
  }

  private static void line(Plan.FindingLine f, Page page) {
    page.put(
        "  %-9s ".formatted(f.severity()), f.text() + " [" + f.rule() + "; " + f.source() + "]");
  }
}
