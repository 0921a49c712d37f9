package holloway.check;

import holloway.plan.Plan;
import holloway.request.Run;
import java.util.List;
import java.util.TreeSet;

/**
 * A run is a chain: legs and crossings in turn, ends joined, lengths told truly. Millimetres; a
 * length written in metres to three decimals from points written to 0.1 mm may be off by 2 mm.
 */
final class ChainRule implements Rule {
  private static final double JOINT_MM = 1;
  private static final double LENGTH_MM = 2;
  private static final double ROUTE_MM = 20;

  @Override
  public void judge(Evidence evidence, Charge charge) {
    TreeSet<String> seen = new TreeSet<>();
    for (Plan.PlannedRun run : evidence.plan().runs()) {
      if (!seen.add(run.id())) {
        charge.run(run.id(), run.id(), "two runs have this id");
      }
      if (run.steps().stream().noneMatch(s -> s.kind().equals("leg"))) {
        charge.run(run.id(), run.id(), "has no leg: a cable lies somewhere");
      }
      Walk.of(run).forEach(at -> judgeStep(at, charge));
      judgeLength(run, evidence.plan().totals().cableM() > 0, charge);
    }
    judgeWanted(evidence, charge, seen);
  }

  private void judgeStep(Walk.At at, Charge charge) {
    if (!at.isLeg() && !at.isCrossing()) {
      charge.step(at, "is a '%s'; a step is a leg or a crossing", at.step().kind());
    }
    if (at.step().path().size() < 2) {
      charge.step(at, "has %d points, needs at least 2", at.step().path().size());
      return;
    }
    if (Math.abs(at.pathMm() - at.step().m() * 1000) > LENGTH_MM) {
      charge.step(at, "says %.3f m, its path is %.3f m", at.step().m(), at.pathMm() / 1000);
    }
    at.before().ifPresent(b -> judgeJoint(b, at, charge));
  }

  private void judgeJoint(Walk.At before, Walk.At at, Charge charge) {
    if (before.step().kind().equals(at.step().kind())) {
      charge.step(at, "is a %s after a %s; they take turns", at.step().kind(), at.step().kind());
    }
    if (before.step().path().size() < 2) {
      return;
    }
    double gap = before.end().to(at.start());
    if (gap > JOINT_MM) {
      charge.step(
          at,
          "starts at %s, %.1f mm from where step %d ends, %s",
          at.start(),
          gap,
          before.index() + 1,
          before.end());
    }
  }

  /** {@code taken}: the take-off has said how much cable each run needs. */
  private void judgeLength(Plan.PlannedRun run, boolean taken, Charge charge) {
    double sum = run.steps().stream().mapToDouble(Plan.PlanStep::m).sum();
    if (Math.abs(sum - run.routeM()) * 1000 > ROUTE_MM) {
      charge.run(run.id(), "route-m", "says %.3f m, its steps add up to %.3f m", run.routeM(), sum);
    }
    if (taken && run.cableM() + 1e-9 < run.routeM()) {
      charge.run(
          run.id(), "cable-m", "%.2f m of cable cannot cover %.3f m", run.cableM(), run.routeM());
    }
  }

  /** Every wanted run is planned or named as unrouted, with its own ends and cable, no other. */
  private void judgeWanted(Evidence evidence, Charge charge, TreeSet<String> planned) {
    TreeSet<String> unrouted = new TreeSet<>();
    evidence.plan().unrouted().forEach(u -> unrouted.add(u.id()));
    TreeSet<String> wanted = new TreeSet<>();
    for (Run r : evidence.request().runs()) {
      wanted.add(r.id());
      if (planned.contains(r.id()) == unrouted.contains(r.id())) {
        charge.run(r.id(), r.id(), "must be either planned or unrouted, once");
      }
    }
    for (Plan.PlannedRun run : evidence.plan().runs()) {
      if (!wanted.contains(run.id())) {
        charge.run(run.id(), run.id(), "nobody asked for this run");
        continue;
      }
      judgeAsked(run, asked(evidence, run.id()), charge);
    }
  }

  private static Run asked(Evidence evidence, String id) {
    return evidence.request().runs().stream().filter(r -> r.id().equals(id)).findFirst().get();
  }

  private void judgeAsked(Plan.PlannedRun run, Run asked, Charge charge) {
    List<String> want = List.of(asked.from(), asked.to(), asked.cable());
    List<String> have = List.of(run.from(), run.to(), run.cable());
    if (!want.equals(have)) {
      charge.run(run.id(), run.id(), "asked was (from, to, cable) %s, planned is %s", want, have);
    }
  }
}
