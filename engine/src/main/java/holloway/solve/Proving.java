package holloway.solve;

import holloway.plan.Certificate;

/**
 * Proves a bound until it is enough or time is up. Against the clock it begins again with growing
 * budgets and keeps the last that was finished, so that a proof is always one that a budget gives;
 * the last budget of all is the whole one.
 */
final class Proving {
  private static final int FIRST_STEPS = 8;
  private static final int GROWTH = 2;

  /** Leaves an unfinished proof; never seen outside. */
  private static final class TimeUp extends RuntimeException {
    private static final long serialVersionUID = 1;

    TimeUp() {
      super("time is up", null, false, false);
    }
  }

  private final Task task;
  private final Budget budget;
  private final Progress progress;
  private final Watch watch;
  private Bound proof;

  Proving(Task task, Budget budget, Progress progress, Watch watch) {
    this.task = task;
    this.budget = budget;
    this.progress = progress;
    this.watch = watch;
  }

  /**
   * The best bound for plans of exactly these runs.
   *
   * @param timed whether time may end it at all; else the whole budget is spent at once
   */
  Certificate prove(int[] runs, Solution best, boolean timed) {
    long enough = watch.enough(best.price(), task.net.grain());
    Solution aim = new Solution(best.paths(), best.method(), best.routed(), enough);
    int steps = timed ? Math.min(FIRST_STEPS, budget.boundSteps()) : budget.boundSteps();
    // The first proof is short and always finished: some bound is better than none.
    Certificate out = once(runs, best, aim, steps, progress);
    progress.closing(best.price(), out.bound());
    while (out.bound() < enough && steps < budget.boundSteps() && !watch.over()) {
      steps = (int) Math.min((long) steps * GROWTH, budget.boundSteps());
      try {
        Certificate next = once(runs, best, aim, steps, this::orLeave);
        out = next.bound() >= out.bound() ? next : out;
        progress.closing(best.price(), out.bound());
      } catch (TimeUp e) {
        return out;
      }
    }
    return out;
  }

  /** After {@link #prove}: as {@link Bound#guide}, of the last proof that was finished. */
  long[] guide() {
    return proof.guide();
  }

  private Certificate once(int[] runs, Solution best, Solution aim, int steps, Progress heard) {
    Budget some = new Budget(budget.orders(), budget.ruins(), steps, budget.looks());
    Bound next = new Bound(task, some, heard);
    Certificate out = next.prove(runs, aim);
    proof = next;
    return aim.price() == best.price() ? out : whole(out, best.price());
  }

  /** A proof that aimed lower is claimed for no more than that; its parts may prove more. */
  private static Certificate whole(Certificate c, long price) {
    long bound = price;
    for (Certificate.Part p : c.parts()) {
      bound = p.impossible() ? bound : Math.min(bound, p.bound());
    }
    long grain = c.grain();
    return new Certificate(
        c.profile(),
        Math.multiplyExact(Math.floorDiv(bound + grain - 1, grain), grain),
        grain,
        c.paidByAll(),
        c.zones(),
        c.runs(),
        c.directed(),
        c.parts());
  }

  private void orLeave(String what, int done, int of) {
    progress.at(what, done, of);
    if (done < of && watch.over()) {
      throw new TimeUp();
    }
  }
}
