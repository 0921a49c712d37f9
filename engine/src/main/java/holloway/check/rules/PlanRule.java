package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.finding.Severity;
import holloway.finding.Source;
import java.util.List;

/** One rule over a finished plan. */
interface PlanRule {
  /** The rule's id as findings carry it. */
  String id();

  /** One or two sentences for the list of rules: what it looks at and why. */
  String about();

  /** The rest of its entry in the rule reference. */
  Entry entry();

  List<Finding> find(Finished finished);

  /**
   * @param severity how binding, in words where places differ
   * @param source clause, or Source.PRACTICE
   * @param limit the figure or duty in a few words
   */
  record Entry(String severity, String source, String limit) {
    Entry(String severity, Source source, String limit) {
      this(severity, source.words(), limit);
    }
  }

  /**
   * What a rule found.
   *
   * @param measured with its unit; {@code limit} likewise; both may be empty
   */
  record Said(String what, String measured, String limit, String remedy) {}

  /** A finding whose text is what was found and what to do. */
  default Finding say(Severity severity, Place place, Source from, boolean broken, Said said) {
    String text = said.what() + " " + said.remedy();
    return new Finding(id(), severity, place, from, text, broken)
        .with(said.measured(), said.limit(), said.remedy());
  }
}
