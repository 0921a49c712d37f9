package holloway.limits;

import holloway.finding.Severity;
import holloway.finding.Source;

/**
 * The answer of one predicate.
 *
 * @param from the clause, or "common practice, no published source", or "from memory"
 * @param text what stopped it and what to do; on an allowed verdict advice, or empty
 * @param severity how binding the rule that decided is; NOTE on an allowed verdict without advice
 */
public record Verdict(boolean allowed, Source from, String text, Severity severity) {
  public static Verdict yes(Source from) {
    return new Verdict(true, from, "", Severity.NOTE);
  }

  /** Does a figure of a person's own rule file decide it? */
  public boolean own() {
    return from.isOwn();
  }

  static Verdict yesBut(Severity severity, Source from, String advice) {
    return new Verdict(true, from, advice, severity);
  }

  static Verdict no(Severity severity, Source from, String text) {
    return new Verdict(false, from, text, severity);
  }

  /** The source in words. */
  public String source() {
    return from.words();
  }
}
