package holloway.solve;

import holloway.plan.Certificate;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The search for a plan that knows no earlier one: the plan, then the proof, then the plan again by
 * what the proof suggests, and where little could still be cheaper all of that. Its answer is all
 * that a live plan keeps.
 */
record FromNothing(Task task, Reach reach, Budget budget, Progress progress, Watch watch) {
  /** Against the clock the plan has this part of the time, then the proof until the next. */
  static final double FOR_THE_PLAN = 0.35;

  static final double FOR_THE_PROOF = 0.85;

  /** Where near enough is asked for, this part of the budget is tried first. */
  private static final double EARLY = 0.1;

  /** The best plan, what its bound stands on, and whether time cut it short. */
  record Found(
      Solution best, Bound.Ground on, List<BoundPart> parts, Certificate bound, boolean cut) {
    private Found(Solution best, Bound proof, Certificate bound, boolean cut) {
      this(best, proof.ground(), proof.proven(), bound, cut);
    }
  }

  FromNothing(Task task, Budget budget, Progress progress, Watch watch) {
    this(task, new Reach(task), budget, progress, watch);
  }

  Solved answer(Found f) {
    return JointPlanner.answer(task, reach, f.best(), f.bound(), f.cut());
  }

  Found found() {
    Found near = watch.gap() > 0 ? early() : null;
    if (near != null) {
      return near;
    }
    PlanSearch search = new PlanSearch(task, budget, progress, watch);
    watch.until(FOR_THE_PLAN);
    Solution first = search.run(reach.routable());
    int[] routed = IntStream.range(0, task.runs()).filter(k -> first.paths()[k] != null).toArray();
    watch.until(FOR_THE_PROOF);
    Bound proof = new Bound(task, budget, progress, watch);
    Certificate bound = proof.prove(routed, first);
    watch.until(1);
    if (bound.bound() >= watch.enough(first.price(), task.net.grain())) {
      return new Found(first, proof, bound, watch.cut());
    }
    Solution led = first;
    if (proof.guide() != null && !watch.over()) {
      led = search.guided(routed, first, proof.guide());
      led = search.restarted(routed, led, proof.guides(), bound.bound());
      bound = nearly(led, bound) ? again(proof, led) : bound;
    }
    Solution best = JointPlanner.finished(task, budget, proof, led, watch);
    return new Found(best, proof, bound, watch.cut());
  }

  /** Not as near as one wants, but so that a better proof may bring it there. */
  private static boolean nearly(Solution plan, Certificate bound) {
    double open = (plan.price() - bound.bound()) / (double) plan.price();
    return open > PlanSearch.FAR && open < 2 * PlanSearch.FAR;
  }

  /** The proof goes on, with what is known of the plan now: it aimed too high before. */
  private Certificate again(Bound proof, Solution plan) {
    long aim = watch.enough(plan.price(), task.net.grain());
    return proof.raise(proof.ground(), proof.proven(), aim, plan.price());
  }

  /** A tenth of the search: the answer if that is proven near enough already, or null. */
  private Found early() {
    Budget some = budget.part(EARLY);
    Progress steps = progress::at;
    watch.until(FOR_THE_PLAN * EARLY);
    Solution first = new PlanSearch(task, some, steps, watch).run(reach.routable());
    if (first.routed() < reach.routable().length) {
      return null;
    }
    watch.until(FOR_THE_PROOF * EARLY);
    Bound proof = new Bound(task, some, steps, watch);
    Certificate bound = proof.prove(reach.routable(), first);
    boolean near = bound.bound() >= watch.enough(first.price(), task.net.grain());
    return near ? new Found(first, proof, bound, false) : null;
  }
}
