package holloway.limits;

import holloway.finding.Severity;
import holloway.units.Length;

/** Advice where no rule of the place was confirmed: common practice, no published source. */
final class CommonPractice {
  static final String SOURCE = "common practice, no published source";

  private CommonPractice() {}

  /** A partition's stud or plate: at most half its width, 16 mm left at the edge. */
  static Verdict partition(Length width, Length diameter, Length edge) {
    if (2 * diameter.nm() > width.nm()) {
      return Verdict.no(
          Severity.PRACTICE,
          SOURCE,
          "A hole of " + diameter + " is over half the width of " + width + ".");
    }
    return edge.compareTo(Length.mm(16)) < 0
        ? Verdict.no(Severity.PRACTICE, SOURCE, "Less than 16 mm of wood is left at the edge.")
        : Verdict.yes(SOURCE);
  }

  static Verdict returnAir(boolean across, boolean plenumRated) {
    return across || plenumRated
        ? Verdict.yes(SOURCE)
        : Verdict.no(Severity.PRACTICE, SOURCE, "Do not run cable along a space that carries air.");
  }
}
