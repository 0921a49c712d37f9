package holloway.check;

import holloway.geometry.Point3;
import holloway.geometry.SiteFrame;
import holloway.hollow.HollowHouse;
import holloway.pipeline.StoneHouse;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import holloway.request.Request;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** The plan that stands for {@link StoneHouse}, and ways to spoil its channels. */
final class StonePlan {
  static final String CHANNEL = "ground/outside-south room/3/channel-1/4870";
  static final String BENCH_CHANNEL = "ground/outside-south room/3/channel-1/2740";
  static final String CUT = CHANNEL + "/to/north room/ceiling/4940-4630/from/desk";
  static final String BENCH_CUT = BENCH_CHANNEL + "/to/south room/ceiling/4940-2500/from/bench";

  /** Index of the desk run's leg in its channel. */
  static final int LEG = 5;

  private static final Made MADE = made(StoneHouse.TEXT);

  /** A plan beside what it is judged by. */
  record Made(Plan plan, HollowHouse house, Request request) {}

  private StonePlan() {}

  private static Made made(String text) {
    WrittenHouse written = WrittenHouse.of(text);
    return new Made(written.plan("surface"), written.hollows(), written.request());
  }

  static Plan good() {
    return MADE.plan();
  }

  static List<Refusal> referee(Plan plan) {
    return Referee.check(plan, MADE.house(), MADE.request()).refusals();
  }

  static List<Refusal> judge(Rule rule, Plan plan) {
    return judge(rule, plan, MADE);
  }

  /** What one rule alone has against a plan. */
  static List<Refusal> judge(Rule rule, Plan plan, Made by) {
    Charge charge = new Charge(SiteFrame.OWN);
    rule.judge(new Evidence(plan, by.house(), by.request()), charge);
    return charge.verdict().refusals();
  }

  static Plan withoutWork(String id) {
    return without(good(), id);
  }

  static Plan without(Plan plan, String id) {
    List<Plan.PlannedWork> works = new ArrayList<>(plan.works());
    if (!works.removeIf(w -> w.id().equals(id))) {
      throw new IllegalArgumentException("no work " + id + " among " + works);
    }
    return Spoiled.with(plan, plan.holes(), works);
  }

  /** The good plan with another kind and price of one of its works. */
  static Plan withWork(String id, String kind, double minutes) {
    List<Plan.PlannedWork> works = new ArrayList<>(without(good(), id).works());
    works.add(new Plan.PlannedWork(id, kind, minutes, 0, 0, ""));
    return Spoiled.with(good(), good().holes(), works);
  }

  /** The good plan with several works in the desk's channel instead of its one. */
  static Plan withGrooves(double... minutes) {
    List<Plan.PlannedWork> works = new ArrayList<>(withoutWork(CUT).works());
    for (int i = 0; i < minutes.length; i++) {
      works.add(new Plan.PlannedWork(CHANNEL + "/to/" + (i + 1), "channel", minutes[i], 0, 0, ""));
    }
    return Spoiled.with(good(), good().holes(), works);
  }

  static Plan withDeskSteps(UnaryOperator<List<Plan.PlanStep>> change) {
    return withRun(good(), "desk/cat6-1", change);
  }

  private static Plan withRun(Plan plan, String run, UnaryOperator<List<Plan.PlanStep>> change) {
    List<Plan.PlannedRun> runs = new ArrayList<>();
    for (Plan.PlannedRun r : plan.runs()) {
      List<Plan.PlanStep> steps = r.id().equals(run) ? change.apply(r.steps()) : r.steps();
      double m = steps.stream().mapToDouble(Plan.PlanStep::m).sum();
      runs.add(new Plan.PlannedRun(r.id(), r.from(), r.to(), r.cable(), m, m + 5, steps));
    }
    return Spoiled.summed(plan.withRuns(runs, plan.totals()));
  }

  static Plan withDeskStep(int index, UnaryOperator<Plan.PlanStep> change) {
    return withDeskSteps(steps -> changed(steps, index, change));
  }

  private static List<Plan.PlanStep> changed(
      List<Plan.PlanStep> steps, int index, UnaryOperator<Plan.PlanStep> change) {
    List<Plan.PlanStep> out = new ArrayList<>(steps);
    out.set(index, change.apply(out.get(index)));
    return out;
  }

  /** The good plan with another path in the desk's channel, priced and measured as it then is. */
  static Plan withDeskPath(UnaryOperator<List<Point3>> change) {
    return withDeskStep(
        LEG,
        s -> {
          List<Point3> path = change.apply(s.path());
          double m = 0;
          for (int i = 1; i < path.size(); i++) {
            m += path.get(i - 1).distanceTo(path.get(i)) / 1e9;
          }
          return leg(s, s.id(), path, m, s.minutes().orElseThrow() / s.m() * m);
        });
  }

  /** A second cable to the desk whose way down the wall lies so far aside of the first one's. */
  static Plan withSecondDeskRun(long asideNm) {
    Plan shifted =
        withDeskPath(
            path -> path.stream().map(p -> new Point3(p.x(), p.y() + asideNm, p.z())).toList());
    List<Plan.PlannedRun> runs = new ArrayList<>(good().runs());
    for (Plan.PlannedRun r : shifted.runs()) {
      if (r.id().equals("desk/cat6-1")) {
        runs.add(
            new Plan.PlannedRun(
                "desk/cat6-2", r.from(), r.to(), r.cable(), r.routeM(), r.cableM(), r.steps()));
      }
    }
    return good().withRuns(runs, good().totals());
  }

  /** The same leg, told to lie in another hollow. */
  static Plan.PlanStep in(String hollow, Plan.PlanStep s) {
    return leg(s, hollow, s.path(), s.m(), s.minutes().orElseThrow());
  }

  private static Plan.PlanStep leg(
      Plan.PlanStep s, String hollow, List<Point3> path, double m, double minutes) {
    return new Plan.PlanStep(
        s.kind(), hollow, s.hollow(), s.label(), path, m, s.feed(), s.fish(), Optional.of(minutes));
  }
}
