package holloway.plan;

import java.util.List;

/**
 * Marks a plan that nobody has proven or judged, so that none of its holes can be taken for one of
 * a judged plan: its labels are H1?, H2? and so on.
 */
public final class Unjudged {
  public static final String MARK = "?";

  private Unjudged() {}

  /** The same plan with marked labels. */
  public static Plan of(Plan plan) {
    List<Plan.PlannedHole> holes = plan.holes().stream().map(Unjudged::hole).toList();
    List<Plan.PlannedRun> runs = plan.runs().stream().map(Unjudged::run).toList();
    return plan.withRuns(runs, plan.totals())
        .withWork(holes, plan.works(), plan.totals().minutes());
  }

  private static Plan.PlannedRun run(Plan.PlannedRun r) {
    List<Plan.PlanStep> steps = r.steps().stream().map(Unjudged::step).toList();
    return new Plan.PlannedRun(r.id(), r.from(), r.to(), r.cable(), r.routeM(), r.cableM(), steps);
  }

  private static Plan.PlanStep step(Plan.PlanStep s) {
    return new Plan.PlanStep(
        s.kind(),
        s.id(),
        s.hollow(),
        s.label().map(l -> l + MARK),
        s.path(),
        s.m(),
        s.feed(),
        s.fish(),
        s.minutes());
  }

  private static Plan.PlannedHole hole(Plan.PlannedHole h) {
    return new Plan.PlannedHole(
        h.id(),
        h.label() + MARK,
        h.kind(),
        h.diameterMm(),
        h.depthMm(),
        h.at(),
        h.between(),
        h.method(),
        h.stand(),
        h.works(),
        h.minutes(),
        h.runs(),
        h.assumed(),
        h.otherMethods(),
        h.bores(),
        h.axis(),
        h.through());
  }
}
