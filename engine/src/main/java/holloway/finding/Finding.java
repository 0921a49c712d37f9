package holloway.finding;

/**
 * One thing a person should know.
 *
 * @param rule the rule's id in plain words with dashes, for example {@code garage-separation}
 * @param severity how binding the rule is
 * @param from the clause where the figure or duty is from, or "common practice, no published
 *     source"
 * @param text what was found and what to do
 * @param broken the plan itself goes against the rule; false for a duty that carrying out the plan
 *     brings with it (seal this hole) and for advice
 * @param measured what this plan has, with its unit; empty for a duty without a number
 * @param limit what the rule lets through, with its unit; empty likewise
 * @param remedy what to do about it, which the text ends with; empty where the text alone says it
 */
public record Finding(
    String rule,
    Severity severity,
    Place place,
    Source from,
    String text,
    boolean broken,
    String measured,
    String limit,
    String remedy) {
  /** A finding without a number. */
  public Finding(
      String rule, Severity severity, Place place, Source from, String text, boolean broken) {
    this(rule, severity, place, from, text, broken, "", "", "");
  }

  /** Of a source that is nobody's law. */
  public Finding(
      String rule, Severity severity, Place place, String source, String text, boolean broken) {
    this(rule, severity, place, Source.anywhere(source), text, broken);
  }

  /** A duty or advice: nothing is broken. */
  public Finding(String rule, Severity severity, Place place, String source, String text) {
    this(rule, severity, place, source, text, false);
  }

  /** The same with the value that was measured, its limit and what to do as fields of their own. */
  public Finding with(String theMeasured, String theLimit, String whatToDo) {
    return new Finding(rule, severity, place, from, text, broken, theMeasured, theLimit, whatToDo);
  }

  /** Its source in words. */
  public String source() {
    return from.words();
  }
}
