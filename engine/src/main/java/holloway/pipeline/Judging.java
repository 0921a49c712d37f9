package holloway.pipeline;

import holloway.finding.Finding;
import holloway.plan.Plan;
import holloway.plan.PlanJson;
import holloway.request.Request;
import holloway.survey.Placed;
import holloway.takeoff.TakeOff;
import java.util.ArrayList;
import java.util.List;

/**
 * What is said of a plan once it is found, the same whoever asks: the inputs, the take-off, what
 * the rules and the referee say.
 *
 * @param surveyed what placing the rooms found
 */
record Judging(Placed placed, List<Finding> surveyed, Request request, Stages.Site site) {
  Judging {
    surveyed = List.copyOf(surveyed);
  }

  /**
   * The whole plan out of a bare one.
   *
   * @param looks what a look into spaces that nothing accounts for may be worth
   */
  Plan whole(Plan bare, List<Plan.OpenShaft> looks) {
    // A rule file may be named by the house and by the command: it is one input all the same.
    List<Plan.Input> inputs = SurveyWords.inputs(placed).stream().distinct().toList();
    Plan noted = bare.withInputs(inputs, SurveyWords.notes(placed, looks));
    Plan taken = TakeOff.of(noted, request, placed, site.needs(noted, request));
    List<Finding> all = new ArrayList<>(surveyed);
    all.addAll(site.findings());
    all.addAll(site.rules(taken, request));
    return taken.withFindings(SurveyWords.lines(all));
  }

  /** What the referee has against the plan as it will be written. */
  List<String> refusals(Plan whole) {
    return site.refusals(PlanJson.read(PlanJson.write(whole)), request);
  }
}
