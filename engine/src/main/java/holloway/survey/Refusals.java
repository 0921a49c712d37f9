package holloway.survey;

import holloway.house.Where;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** Misclosures too large for any plan, as problems of the file. */
final class Refusals {
  private Refusals() {}

  static void add(Closures closures, Texts texts, Problems problems) {
    closures.misclosures().stream()
        .filter(Misclosure::isImpossible)
        .forEach(m -> problems.add(where(m), "%s", text(m, texts)));
  }

  private static String text(Misclosure m, Texts texts) {
    return "%s: the measurements miss by %s going round, more than a wall is thick (%s would be usual). %s Walk it: %s"
        .formatted(
            m.where(),
            texts.length(m.size().nm()),
            texts.length(m.tolerance().nm()),
            String.join(" ", m.verdict()),
            m.steps().stream().map(s -> step(s, texts)).collect(Collectors.joining("; ")));
  }

  private static String step(Step s, Texts texts) {
    return "%s, makes %s".formatted(s.what(), texts.length(s.sum().nm()));
  }

  /** Of the first suspect that stands in the file, else of the first measurement that does. */
  private static Where where(Misclosure m) {
    List<String> suspects = m.suspects().stream().map(Misclosure.Suspect::measurement).toList();
    return m.steps().stream()
        .filter(s -> !s.where().equals(Where.NOWHERE))
        .min(
            Comparator.comparing((Step s) -> !suspects.contains(s.what()))
                .thenComparing(Step::where))
        .map(Step::where)
        .orElse(Where.NOWHERE);
  }
}
