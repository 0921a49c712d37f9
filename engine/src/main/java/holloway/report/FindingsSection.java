package holloway.report;

import holloway.plan.Plan;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Findings by how binding they are: broken law on top, then law, the same advice on one line. */
final class FindingsSection {
  private static final List<String> ORDER = List.of("law", "standard", "practice", "note");
  private static final Pattern LABEL = Pattern.compile("\\bH(\\d+)\\b");

  private FindingsSection() {}

  static void write(List<Plan.FindingLine> findings, Page page) {
    page.title("FINDINGS");
    for (Plan.FindingLine f : findings) {
      if (f.breaksLaw()) {
        line("BROKEN", f, HouseWords.plain(f.text()), page);
      }
    }
    for (String severity : ORDER) {
      List<Plan.FindingLine> these =
          findings.stream().filter(f -> f.severity().equals(severity) && !f.breaksLaw()).toList();
      grouped(these).forEach((text, f) -> line(severity, f, text, page));
    }
    if (findings.isEmpty()) {
      page.put("  ", "None.");
    }
  }

  /** Texts that differ only in the hole they name become one that lists the holes. */
  private static Map<String, Plan.FindingLine> grouped(List<Plan.FindingLine> findings) {
    Map<String, List<Plan.FindingLine>> alike = new LinkedHashMap<>();
    for (Plan.FindingLine f : findings) {
      String text = HouseWords.plain(f.text());
      boolean one = labels(text).size() == 1;
      String key =
          f.rule() + "|" + f.source() + "|" + (one ? LABEL.matcher(text).replaceAll("H") : text);
      alike.computeIfAbsent(key, k -> new ArrayList<>()).add(f);
    }
    Map<String, Plan.FindingLine> out = new LinkedHashMap<>();
    for (List<Plan.FindingLine> group : alike.values()) {
      Plan.FindingLine first = group.get(0);
      out.putIfAbsent(together(HouseWords.plain(first.text()), group), first);
    }
    return out;
  }

  private static String together(String text, List<Plan.FindingLine> group) {
    if (group.size() == 1 || labels(text).isEmpty()) {
      return text;
    }
    TreeSet<Integer> all = new TreeSet<>();
    group.forEach(f -> all.addAll(labels(f.text())));
    List<String> names = all.stream().map(n -> "H" + n).toList();
    return "At " + String.join(", ", names) + ", each: " + text.replaceAll("\\bH\\d+\\b", "it");
  }

  private static Set<Integer> labels(String text) {
    TreeSet<Integer> out = new TreeSet<>();
    Matcher m = LABEL.matcher(text);
    while (m.find()) {
      out.add(Integer.valueOf(m.group(1)));
    }
    return out;
  }

  private static void line(String lead, Plan.FindingLine f, String text, Page page) {
    page.put("  %-9s ".formatted(lead), text + " [" + f.rule() + "; " + f.source() + "]");
  }
}
