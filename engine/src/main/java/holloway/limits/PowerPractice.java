package holloway.limits;

import holloway.finding.Severity;
import holloway.finding.Source;
import holloway.units.Length;

/** The distance from sheathed power cable that a person asks for, against interference. */
final class PowerPractice {
  private PowerPractice() {}

  static Verdict judge(Length gap, Length wanted, Source law, LocalRules local) {
    Source source = local.of(RuleKey.BESIDE_POWER, WiringFigures.BESIDE_POWER).cited();
    return gap.compareTo(wanted) >= 0
        ? Verdict.yes(law)
        : Verdict.no(
            local.severity(RuleKey.BESIDE_POWER, Severity.PRACTICE),
            source,
            "Runs "
                + gap
                + " beside power cable; "
                + wanted
                + " is wanted. Cross at right angles.");
  }
}
