package holloway.schedule;

import holloway.hollow.HollowHouse;
import holloway.plan.Plan;
import holloway.request.Request;
import holloway.request.Run;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** From a plan to the order of work. */
public final class WorkPlanner {
  private WorkPlanner() {}

  /**
   * @param plan with cut lengths
   * @param boxes name of the box each run is drawn from, by run id; those left out come from the
   *     first box of their kind
   */
  public static WorkSchedule of(
      Plan plan, HollowHouse house, Request request, Map<String, String> boxes) {
    Places places = new Places(house, request);
    StretchFinder finder = new StretchFinder(plan, places);
    List<List<Stretch>> stretches =
        plan.runs().stream().filter(r -> !r.steps().isEmpty()).map(finder::of).toList();
    Openings openings = new Openings(plan, places);
    EndSteps ends =
        new EndSteps(
            places,
            request.runs().stream().filter(Run::spare).map(Run::id).collect(Collectors.toSet()),
            stretches);
    HoleSteps holes = new HoleSteps(plan, house, places, openings);
    List<Plan.PlannedRun> runs = stretches.stream().map(s -> s.get(0).run()).toList();
    List<Pull> pulls =
        new PullPlanner(plan, boxes, house.framed().placed().house().conduits()).of(stretches);
    List<Step> steps = new ArrayList<>(holes.list());
    steps.addAll(new PullSteps(plan, places, openings).list(pulls));
    steps.addAll(ends.list(runs));
    List<Step> made = List.copyOf(steps);
    openings.list().stream().filter(openings::closes).forEach(w -> steps.add(holes.close(w, made)));
    List<RunProof> tests = runs.stream().map(ends::whatToTest).toList();
    return new StepOrder(steps, request.wishes().crew())
        .schedule(pulls, tests)
        .with(openings.places());
  }
}
