package holloway.report;

import holloway.plan.Plan;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Findings of one rule that differ by the hole or run they are of, and by what was measured. */
final class AlikeFindings {
  /** Said once at the end of the section. */
  private static final String LOCAL = " The local code decides.";

  private static final Pattern LABEL = Pattern.compile("\\bH\\d+\\b");

  /** H9 before H10, names of runs by letters. */
  private static final Comparator<String> ORDER =
      Comparator.comparingInt((String s) -> LABEL.matcher(s).matches() ? number(s) : 0)
          .thenComparing(Comparator.naturalOrder());

  private final List<Plan.FindingLine> group;
  private final UnaryOperator<String> words;

  AlikeFindings(List<Plan.FindingLine> group, UnaryOperator<String> words) {
    this.group = group;
    this.words = words;
  }

  /** The same for findings that one paragraph can say: subject and measured value left out. */
  static String key(Plan.FindingLine f) {
    String text = subject(f).map(s -> f.text().replace(s, "#")).orElse(f.text());
    String plain = f.measured().isEmpty() ? text : text.replace(f.measured(), "~");
    return plain + " [" + f.rule() + "; " + f.source() + "; " + f.limit() + "]";
  }

  void write(Page page) {
    Plan.FindingLine f = group.get(0);
    TreeSet<String> subjects = new TreeSet<>(ORDER);
    group.forEach(g -> subject(g).ifPresent(subjects::add));
    boolean several = subjects.size() > 1;
    String lead = several ? String.join(", ", subjects) + ", each: " : "";
    String rule = "[" + f.rule() + "; " + f.source() + "]";
    boolean plain = f.measured().isEmpty() && f.remedy().isEmpty();
    page.put(
        "  %-9s ".formatted(f.severity()),
        (f.broken() ? "BROKEN: " : "")
            + words.apply(lead + what(f, several))
            + (plain ? " " + rule : ""));
    if (!plain) {
      fields(f, rule, page);
    }
  }

  private void fields(Plan.FindingLine f, String rule, Page page) {
    String indent = " ".repeat(12);
    if (!f.measured().isEmpty()) {
      page.put(indent + "Here: ", indent.length() + 2, words.apply(measured()) + ".");
      page.put(indent + "Asked: ", indent.length() + 2, f.limit() + ".");
    }
    if (!f.remedy().isEmpty()) {
      page.put(indent + "Do: ", indent.length() + 2, words.apply(plain(f.remedy())));
    }
    page.put(indent, rule);
  }

  /** The text up to what to do; of several, the first one's words without its name. */
  private String what(Plan.FindingLine f, boolean several) {
    String text = f.text();
    if (!f.remedy().isEmpty() && text.endsWith(f.remedy())) {
      text = text.substring(0, text.length() - f.remedy().length()).strip();
    }
    if (!several) {
      return plain(text);
    }
    String name = subject(f).orElse("");
    String said =
        text.replace(
            name,
            LABEL.matcher(name).matches() ? "the hole" : name.contains("/") ? "the run" : "it");
    if (!f.measured().isEmpty() && byMeasure().size() > 1) {
      said = said.replace(f.measured(), "as far as said below");
    }
    return Character.toUpperCase(said.charAt(0)) + said.substring(1);
  }

  private static String plain(String text) {
    return text.endsWith(LOCAL) ? text.substring(0, text.length() - LOCAL.length()) : text;
  }

  /** Each value with the holes or runs it is of, where there is more than one value. */
  private String measured() {
    Map<String, TreeSet<String>> by = byMeasure();
    if (by.size() == 1) {
      return by.keySet().iterator().next();
    }
    return by.entrySet().stream()
        .sorted(
            Comparator.comparing(e -> e.getValue().isEmpty() ? "" : e.getValue().first(), ORDER))
        .map(e -> e.getKey() + " (" + String.join(", ", e.getValue()) + ")")
        .collect(Collectors.joining("; "));
  }

  private Map<String, TreeSet<String>> byMeasure() {
    Map<String, TreeSet<String>> by = new LinkedHashMap<>();
    for (Plan.FindingLine g : group) {
      TreeSet<String> at = by.computeIfAbsent(g.measured(), m -> new TreeSet<>(ORDER));
      subject(g).ifPresent(at::add);
    }
    return by;
  }

  /** The one hole that the text names, or the run or place with which it begins. */
  static Optional<String> subject(Plan.FindingLine f) {
    List<String> labels =
        LABEL.matcher(f.text()).results().map(MatchResult::group).distinct().toList();
    if (labels.size() == 1) {
      return Optional.of(labels.get(0));
    }
    boolean begins = !f.place().isEmpty() && f.text().startsWith(f.place() + " ");
    return begins && labels.isEmpty() ? Optional.of(f.place()) : Optional.empty();
  }

  private static int number(String label) {
    return Integer.parseInt(label.substring(1));
  }
}
