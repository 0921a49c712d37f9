package holloway.check.rules;

import holloway.finding.Finding;
import java.util.List;

/** One rule over a finished plan. */
interface PlanRule {
  /** The rule's id as findings carry it. */
  String id();

  /** One or two sentences for the list of rules: what it looks at and why. */
  String about();

  List<Finding> find(Finished finished);
}
