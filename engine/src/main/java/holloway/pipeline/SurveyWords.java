package holloway.pipeline;

import holloway.finding.Finding;
import holloway.plan.Plan;
import holloway.survey.Misclosure;
import holloway.survey.Placed;
import holloway.survey.SharedOut;
import holloway.survey.Step;
import holloway.survey.UnaccountedSpace;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;

/** What the survey says, as the lines a plan carries. */
final class SurveyWords {
  private SurveyWords() {}

  static List<Plan.Input> inputs(Placed placed) {
    return placed.house().inputs().stream().map(i -> new Plan.Input(i.file(), i.sha256())).toList();
  }

  static Plan.SurveyNotes notes(Placed placed, List<Plan.OpenShaft> first) {
    return new Plan.SurveyNotes(
        placed.misclosures().stream().map(SurveyWords::line).toList(),
        placed.spaces().stream().map(SurveyWords::line).toList(),
        List.copyOf(new TreeSet<>(placed.assumed())),
        placed.shared().stream().map(SurveyWords::line).toList(),
        first);
  }

  static String line(Misclosure m) {
    List<String> walk =
        m.steps().isEmpty() ? m.measurements() : m.steps().stream().map(SurveyWords::line).toList();
    return "%s: off by %d mm where %d mm would be usual; measured: %s. %s"
        .formatted(
            m.where(),
            Math.round(m.size().toMm()),
            Math.round(m.tolerance().toMm()),
            String.join("; ", walk),
            String.join(" ", m.verdict()))
        .strip();
  }

  private static String line(Step s) {
    return String.format(
        Locale.ROOT,
        "%s: %+.1f mm, spread %.1f mm, sum %.1f mm",
        s.what(),
        s.value().toMm(),
        s.spread().toMm(),
        s.sum().toMm());
  }

  static String line(SharedOut s) {
    return String.format(
        Locale.ROOT,
        "%s: off by %.1f mm where %.1f mm are allowed, spread over its %d measurements; none was"
            + " moved by more than %.1f mm (%s)",
        s.where(),
        s.size().toMm(),
        s.tolerance().toMm(),
        s.count(),
        Math.ceil(s.moved().toMm() * 10) / 10,
        s.most());
  }

  static String line(UnaccountedSpace u) {
    long wide = u.outline().xRange().hi() - u.outline().xRange().lo();
    long deep = u.outline().yRange().hi() - u.outline().yRange().lo();
    return String.format(
        Locale.ROOT,
        "%s level: %.2f m2 (%d x %d mm, east-west by north-south) that no room or wall accounts"
            + " for, behind %s%s; likely %s: %s",
        String.join(" and ", u.levels()),
        u.areaM2(),
        Math.round(wide / 1e6),
        Math.round(deep / 1e6),
        u.touches().isEmpty()
            ? "no face"
            : String.join(", ", u.touches().stream().map(t -> t.face().toString()).toList()),
        u.underRoof() ? ", up to the roof" : "",
        u.likely(),
        u.serves());
  }

  /** Findings as lines of the plan: law first, then by rule and text, each once. */
  static List<Plan.FindingLine> lines(List<Finding> findings) {
    return findings.stream()
        .sorted(
            Comparator.comparing(Finding::severity)
                .thenComparing(Finding::rule)
                .thenComparing(f -> f.place().id())
                .thenComparing(Finding::text))
        .map(
            f ->
                new Plan.FindingLine(
                    f.rule(),
                    f.severity().word(),
                    f.place().at(),
                    f.source(),
                    f.text(),
                    f.broken(),
                    f.place().id(),
                    f.measured(),
                    f.limit(),
                    f.remedy()))
        .distinct()
        .toList();
  }
}
