package holloway.pipeline;

import holloway.house.Chase;
import holloway.house.House;
import holloway.plan.Plan;
import holloway.report.AcceptText;
import holloway.request.Request;
import holloway.survey.Placed;
import holloway.survey.UnaccountedSpace;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What a look into a space that nothing accounts for may be worth: the house is planned again with
 * the space as a shaft that is open from bottom to top. The plan itself never uses such a space.
 * Planned at quick effort, so that the saving is one that can be had, if not the largest.
 */
final class OpenShafts {
  /** So many spaces are tried, the largest first: each costs a plan. */
  static final int MOST = 2;

  /** Less is not worth a look, minutes; from experience. */
  static final double LEAST_MINUTES = 1;

  private final Stages stages;
  private final Progress progress;

  OpenShafts(Stages stages, Progress progress) {
    this.stages = stages;
    this.progress = progress;
  }

  /**
   * @param plan of the house as it is stated
   */
  List<Plan.OpenShaft> worthALook(Placed placed, Request request, Plan plan) {
    List<UnaccountedSpace> tried =
        placed.spaces().stream()
            .filter(UnaccountedSpace::mayServe)
            .sorted(
                Comparator.comparingDouble((UnaccountedSpace s) -> -s.areaM2())
                    .thenComparing(UnaccountedSpace::name))
            .limit(MOST)
            .toList();
    List<Plan.OpenShaft> out = new ArrayList<>();
    for (UnaccountedSpace s : tried) {
      progress.now("planning as if " + s.name() + " were a shaft");
      shaft(placed.house(), s, request, plan).ifPresent(out::add);
    }
    return out;
  }

  /** Minutes, to the 1/10 000 of a minute that prices are counted in. */
  private static double saved(Plan plan, Plan through) {
    return Math.round((plan.totals().minutes() - through.totals().minutes()) * 1e4) / 1e4;
  }

  private Optional<Plan.OpenShaft> shaft(
      House house, UnaccountedSpace s, Request request, Plan plan) {
    Chase chase = s.chase().orElseThrow();
    List<Chase> chases = new ArrayList<>(house.chases());
    chases.add(chase);
    chases.sort(Comparator.comparing(Chase::name));
    Placed other = stages.survey(house.withChases(chases)).value();
    Plan through = stages.derive(other, request).plan(request, Thoroughness.QUICK);
    int more = plan.unrouted().size() - through.unrouted().size();
    double less = more == 0 ? saved(plan, through) : 0;
    boolean worth = more > 0 || (more == 0 && less >= LEAST_MINUTES);
    return worth
        ? Optional.of(new Plan.OpenShaft(s.name(), less, more, AcceptText.of(chase, house)))
        : Optional.empty();
  }
}
