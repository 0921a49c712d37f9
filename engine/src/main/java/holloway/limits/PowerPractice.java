package holloway.limits;

import holloway.finding.Severity;
import holloway.units.Length;

/** The distance from sheathed power cable that a person asks for, against interference. */
final class PowerPractice {
  private PowerPractice() {}

  static Verdict judge(Length gap, Length wanted, String law) {
    String source = WiringFigures.BESIDE_POWER.cited();
    return gap.compareTo(wanted) >= 0
        ? Verdict.yes(law)
        : Verdict.no(
            Severity.PRACTICE,
            source,
            "Runs "
                + gap
                + " beside power cable; "
                + wanted
                + " is wanted. Cross at right angles.");
  }
}
