package holloway.limits;

import holloway.finding.Severity;
import holloway.finding.Source;
import holloway.units.Length;

/** Advice where no rule of the place was confirmed: common practice, no published source. */
final class CommonPractice {
  private CommonPractice() {}

  /** A partition's stud or plate: at most half its width, 16 mm left at the edge. */
  static Verdict partition(
      Length width, Length diameter, Length edge, RuleKey key, LocalRules local) {
    Figure share = local.of(key, TimberFigures.PARTITION_SHARE);
    if (!share.holds(diameter, width)) {
      return Verdict.no(
          local.severity(key, Severity.PRACTICE),
          source(share),
          "A hole of %s is over %s%s the width of %s."
              .formatted(diameter, share.said(), share.said().equals("half") ? "" : " of", width));
    }
    Figure least = local.of(RuleKey.STUD_EDGE, TimberFigures.PARTITION_EDGE);
    return edge.compareTo(least.length()) < 0
        ? Verdict.no(
            local.severity(RuleKey.STUD_EDGE, Severity.PRACTICE),
            source(least),
            "Less than " + least.said() + " of wood is left at the edge.")
        : Verdict.yes(source(share));
  }

  private static Source source(Figure figure) {
    return figure.from().isOwn() ? figure.from() : Source.PRACTICE;
  }

  static Verdict returnAir(boolean across, boolean plenumRated) {
    return across || plenumRated
        ? Verdict.yes(Source.PRACTICE)
        : Verdict.no(
            Severity.PRACTICE, Source.PRACTICE, "Do not run cable along a space that carries air.");
  }
}
