package holloway.check.rules;

import holloway.finding.Severity;
import holloway.finding.Source;
import holloway.house.RulePlace;

/**
 * How binding the duty to stop fire at a hole is. Only the US wording was seen; elsewhere the duty
 * is named from memory, and the local code decides everywhere.
 */
record FireDuty(Severity severity, Source source) {
  static FireDuty of(RulePlace place, Source usSource) {
    return switch (place) {
      case US -> new FireDuty(Severity.LAW, usSource);
      case UK ->
          new FireDuty(
              Severity.STANDARD, Source.uk("Approved Document B, fire-stopping (from memory)"));
      case EU, NONE -> new FireDuty(Severity.PRACTICE, Source.PRACTICE);
    };
  }
}
