package holloway.check;

import holloway.plan.Plan;
import holloway.request.Effort;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * The same plan with something changed in it and its totals added up again, so that it is refused
 * for its fault only.
 */
public final class Spoiled {
  private Spoiled() {}

  static Plan withSteps(Plan p, UnaryOperator<List<Plan.PlanStep>> change) {
    List<Plan.PlannedRun> runs = new ArrayList<>();
    for (Plan.PlannedRun r : p.runs()) {
      List<Plan.PlanStep> steps = change.apply(new ArrayList<>(r.steps()));
      double m = steps.stream().mapToDouble(Plan.PlanStep::m).sum();
      runs.add(new Plan.PlannedRun(r.id(), r.from(), r.to(), r.cable(), m, m + 5, steps));
    }
    return summed(p.withRuns(runs, p.totals()));
  }

  static Plan withStep(Plan p, int index, Plan.PlanStep step) {
    return withSteps(
        p,
        s -> {
          s.set(index, step);
          return s;
        });
  }

  public static Plan with(Plan p, List<Plan.PlannedHole> holes, List<Plan.PlannedWork> works) {
    return summed(
        new Plan(
            p.format(),
            p.house(),
            p.profile(),
            p.perMinute(),
            p.inputs(),
            p.totals(),
            p.runs(),
            holes,
            p.unrouted(),
            works,
            p.findings(),
            p.materials(),
            p.survey()));
  }

  /** The good plan without one of its works. */
  static Plan without(String work) {
    Plan good = ToyPlan.good();
    return with(
        good, good.holes(), good.works().stream().filter(w -> !w.id().equals(work)).toList());
  }

  /** The good plan with a bit of that many millimetres for its first hole. */
  public static Plan withBit(int mm) {
    Plan good = ToyPlan.good();
    Plan.PlannedHole wide =
        ToyPlan.hole(
            "west/top/1000",
            "H1",
            ToySteps.p(-57, 1000, 2362),
            "west/bay-800",
            List.of(ToyPlan.RUN),
            mm,
            1);
    return with(good, List.of(wide, good.holes().get(1)), good.works());
  }

  /** The same plan with its totals added up. */
  public static Plan summed(Plan p) {
    double minutes =
        p.works().stream().mapToDouble(Plan.PlannedWork::minutes).sum()
            + p.runs().stream()
                .flatMap(r -> r.steps().stream())
                .mapToDouble(s -> s.minutes().orElse(0.0))
                .sum();
    long objective = Math.round(minutes * Effort.PER_MINUTE);
    int patches = p.works().stream().mapToInt(Plan.PlannedWork::patches).sum();
    int bores = p.holes().stream().mapToInt(Plan.PlannedHole::bores).sum();
    List<String> zones =
        p.works().stream()
            .filter(w -> w.kind().equals("zone"))
            .map(Plan.PlannedWork::zone)
            .sorted()
            .toList();
    double route = p.runs().stream().mapToDouble(Plan.PlannedRun::routeM).sum();
    double cable = p.runs().stream().mapToDouble(Plan.PlannedRun::cableM).sum();
    return p.withRuns(
        p.runs(),
        new Plan.Totals(
            objective,
            objective,
            0,
            minutes,
            bores + patches,
            patches,
            route,
            cable,
            0,
            Optional.empty(),
            "USD",
            zones));
  }
}
