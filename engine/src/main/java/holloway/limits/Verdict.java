package holloway.limits;

import holloway.finding.Severity;

/**
 * The answer of one predicate.
 *
 * @param source the clause, or "common practice, no published source", or "from memory"
 * @param text what stopped it and what to do; on an allowed verdict advice, or empty
 * @param severity how binding the rule that decided is; NOTE on an allowed verdict without advice
 */
public record Verdict(boolean allowed, String source, String text, Severity severity) {
  public static Verdict yes(String source) {
    return new Verdict(true, source, "", Severity.NOTE);
  }

  /** Does a figure of a person's own rule file decide it? */
  public boolean own() {
    return LocalRules.isLocal(source);
  }

  static Verdict yesBut(Severity severity, String source, String advice) {
    return new Verdict(true, source, advice, severity);
  }

  static Verdict no(Severity severity, String source, String text) {
    return new Verdict(false, source, text, severity);
  }
}
