package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.finding.Severity;
import holloway.limits.Figure;
import holloway.limits.RuleKey;
import holloway.limits.TimberFigures;
import holloway.plan.Plan;
import java.util.Optional;

/** B17: cable right behind a lining that things are screwed into, said once a place. */
abstract class BehindLining implements PlanRule {
  @Override
  public Entry entry() {
    return new Entry(
        "practice",
        TimberFigures.PLATE_EDGE.from().noting(" (asked for power wiring)"),
        "1-1/4 in (32 mm)");
  }

  /**
   * Nothing where a screw that is short enough for power wiring does not reach it.
   *
   * @param lining millimetres from the visible face to the cable
   */
  Optional<Finding> judge(
      Plan.PlanStep s, double lining, String where, String remedy, Finished finished) {
    Figure figure = finished.figure(RuleKey.NAIL_PLATE_EDGE, TimberFigures.PLATE_EDGE);
    return lining >= figure.length().toMm()
        ? Optional.empty()
        : Optional.of(
            say(
                finished.severity(RuleKey.NAIL_PLATE_EDGE, Severity.PRACTICE),
                Place.of(s.id(), Legs.start(s)),
                NailPlate.source(finished),
                false,
                new Said(where, Legs.number("%.1f mm", lining), figure.said(), remedy)));
  }
}
