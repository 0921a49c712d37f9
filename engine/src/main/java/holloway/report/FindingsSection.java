package holloway.report;

import holloway.plan.Plan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Findings by how binding they are, law first. */
final class FindingsSection {
  private static final List<String> ORDER = List.of("law", "standard", "practice", "note");

  private static final Pattern LABEL = Pattern.compile("\\bH\\d+\\b");

  private FindingsSection() {}

  /** What is broken first within each severity; one line where only the hole's label differs. */
  static void write(List<Plan.FindingLine> findings, UnaryOperator<String> words, Page page) {
    page.title("FINDINGS");
    for (String severity : ORDER) {
      for (boolean broken : List.of(true, false)) {
        Map<String, List<Plan.FindingLine>> alike = new LinkedHashMap<>();
        findings.stream()
            .filter(f -> f.severity().equals(severity) && f.broken() == broken)
            .forEach(f -> alike.computeIfAbsent(key(f), k -> new ArrayList<>()).add(f));
        alike.values().forEach(group -> lines(group, words, page));
      }
    }
    if (findings.isEmpty()) {
      page.put("  ", "None.");
    }
  }

  /** The text with its one label left out; with none or several it stands alone. */
  private static String key(Plan.FindingLine f) {
    List<String> labels = labels(f.text());
    String text = labels.size() == 1 ? LABEL.matcher(f.text()).replaceAll("H") : f.text();
    return text + " [" + f.rule() + "; " + f.source() + "]";
  }

  private static List<String> labels(String text) {
    return LABEL.matcher(text).results().map(MatchResult::group).distinct().toList();
  }

  private static void lines(List<Plan.FindingLine> group, UnaryOperator<String> words, Page page) {
    Plan.FindingLine f = group.get(0);
    TreeSet<String> labels =
        new TreeSet<>(Comparator.comparingInt(l -> Integer.parseInt(l.substring(1))));
    group.forEach(g -> labels.addAll(labels(g.text())));
    String lead =
        labels.size() > 1 && group.size() > 1 ? String.join(", ", labels) + ", each: " : "";
    String broken = f.broken() ? "BROKEN: " : "";
    page.put(
        "  %-9s ".formatted(f.severity()),
        broken
            + lead
            + words.apply(lead.isEmpty() ? f.text() : first(f.text()))
            + " ["
            + f.rule()
            + "; "
            + f.source()
            + "]");
  }

  /** Said of several: "the hole" where the first one's label stood. */
  private static String first(String text) {
    String plain = LABEL.matcher(text).replaceAll("the hole");
    return Character.toUpperCase(plain.charAt(0)) + plain.substring(1);
  }
}
