package holloway.pack;

import holloway.plan.Plan;
import holloway.report.SheetWords;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the rules say, law first. The same rule for several holes is one entry, and a sentence that
 * differs by its hole or run only is said of the first; the others are named behind it.
 */
final class RuleFacts {
  private final Plan plan;
  private final SheetWords words;

  RuleFacts(Plan plan, SheetWords words) {
    this.plan = plan;
    this.words = words;
  }

  List<Map<String, Object>> cards() {
    Map<String, List<Plan.FindingLine>> alike = new LinkedHashMap<>();
    for (String severity : List.of("law", "standard", "practice", "note")) {
      plan.findings().stream()
          .filter(f -> f.severity().equals(severity))
          .forEach(
              f ->
                  alike
                      .computeIfAbsent(severity + f.rule() + f.remedy(), k -> new ArrayList<>())
                      .add(f));
    }
    return alike.values().stream().map(this::card).toList();
  }

  private Map<String, Object> card(List<Plan.FindingLine> alike) {
    Plan.FindingLine f = alike.get(0);
    Map<String, Object> out = new LinkedHashMap<>();
    out.put("severity", Language.ENGLISH.texts().get("severity." + f.severity()));
    out.put("broken", f.broken());
    out.put("texts", texts(alike));
    out.put("remedy", f.remedy().isEmpty() ? null : words.sentence(f.remedy()));
    out.put("source", f.source());
    return out;
  }

  private List<Map<String, Object>> texts(List<Plan.FindingLine> alike) {
    Map<String, List<Plan.FindingLine>> same = new LinkedHashMap<>();
    alike.forEach(f -> same.computeIfAbsent(withoutSubject(f), k -> new ArrayList<>()).add(f));
    List<Map<String, Object>> out = new ArrayList<>();
    for (List<Plan.FindingLine> here : same.values()) {
      List<String> of =
          here.stream().map(words::subject).flatMap(Optional::stream).distinct().toList();
      Map<String, Object> text = new LinkedHashMap<>();
      text.put("text", words.sentence(withoutRemedy(here.get(0))));
      text.put("others", of.size() > 1 ? String.join(", ", of.subList(1, of.size())) : null);
      out.add(text);
    }
    return out;
  }

  private String withoutSubject(Plan.FindingLine f) {
    String text = withoutRemedy(f);
    return words.subject(f).map(s -> text.replace(s, "#")).orElse(text);
  }

  /** The remedy stands below by itself. */
  private static String withoutRemedy(Plan.FindingLine f) {
    boolean twice = !f.remedy().isEmpty() && f.text().endsWith(" " + f.remedy());
    return twice ? f.text().substring(0, f.text().length() - f.remedy().length() - 1) : f.text();
  }
}
