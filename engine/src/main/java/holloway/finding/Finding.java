package holloway.finding;

/**
 * One thing a person should know.
 *
 * @param rule the rule's id in plain words with dashes, for example {@code garage-separation}
 * @param severity how binding the rule is
 * @param source where the figure or duty is from, or "common practice, no published source"
 * @param text what was found and what to do
 * @param broken the plan itself goes against the rule; false for a duty that carrying out the plan
 *     brings with it (seal this hole) and for advice
 */
public record Finding(
    String rule, Severity severity, Place place, String source, String text, boolean broken) {
  /** A duty or advice: nothing is broken. */
  public Finding(String rule, Severity severity, Place place, String source, String text) {
    this(rule, severity, place, source, text, false);
  }
}
