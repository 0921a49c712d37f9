package holloway.solve;

import java.util.Arrays;
import java.util.List;

/**
 * One path for each run out of what is to choose from, all sets of them: depth first, turning back
 * where what is chosen already costs too much.
 */
final class Choices {
  /** What settling the methods of a whole plan counts for. */
  private static final int SETTLING = 200;

  /**
   * What runs that are alike may walk.
   *
   * @param over by path, ascending: units of the plan's price that no other run's can be less by
   */
  record Choice(int[] runs, List<Path> paths, long[] over) {}

  private final Task task;
  private final Network net;
  private final List<Choice> all;
  private final long proved;
  private final Effort effort;
  private final Draft draft;
  private final int[] seen;
  private int look;
  private Solution best;
  private long below;

  /** How many runs may still stay without a path. */
  private int spare;

  /** The first plan will do. */
  private boolean any;

  /**
   * @param proved no plan costs less than this and what its paths are over
   */
  Choices(Task task, List<Choice> all, long proved, Effort effort) {
    this.task = task;
    this.net = task.net;
    this.all = all;
    this.proved = proved;
    this.effort = effort;
    draft = new Draft(task, new Zones(net));
    seen = new int[net.methods.length];
  }

  /** The cheapest plan if the effort was not over; the known one if none costs less. */
  Solution cheaper(Solution known) {
    best = known;
    below = known.price();
    choose(0, 0, 0, proved);
    return best;
  }

  /**
   * Some plan that leaves out so many runs at most, null if there is none or the effort is over.
   */
  Solution any(int without) {
    best = null;
    below = Network.SHUT;
    any = true;
    spare = without;
    choose(0, 0, 0, 0);
    return best;
  }

  private boolean done() {
    return any && best != null || effort.over();
  }

  /**
   * @param first of the paths for this run: runs that are alike might as well change theirs
   * @param least that a plan with what is chosen costs
   */
  private void choose(int kind, int member, int first, long least) {
    if (kind == all.size()) {
      settle();
      return;
    }
    Choice c = all.get(kind);
    int run = c.runs()[member];
    boolean last = member + 1 == c.runs().length;
    for (int i = first; i < c.paths().size() && least + c.over()[i] < below && !done(); i++) {
      Path p = c.paths().get(i);
      effort.take(2L * p.arcs().length + 1);
      if (agrees(run, p)) {
        draft.add(run, p);
        if (surely() < below) {
          long now = least + (any ? 0 : c.over()[i]);
          choose(last ? kind + 1 : kind, last ? 0 : member + 1, last ? 0 : i, now);
        }
        draft.remove(run);
      }
    }
    int rest = c.runs().length - member;
    if (rest <= spare && !done()) {
      spare -= rest;
      choose(kind + 1, 0, 0, least);
      spare += rest;
    }
  }

  private boolean agrees(int run, Path p) {
    Demand d = task.demands[run];
    return Places.has(draft.alternatives(d.from()), p.start())
        && Places.has(draft.alternatives(d.to()), p.end(net));
  }

  /** What the runs chosen pay, but for works that depend on how a hole is made. */
  private long surely() {
    long sum = draft.price();
    look++;
    for (Path p : draft.paths) {
      for (int arc : p == null ? new int[0] : p.arcs()) {
        for (int h : net.edgeHoles[arc >> 1]) {
          if (seen[h] != look) {
            seen[h] = look;
            sum -= inDoubt(h);
          }
        }
      }
    }
    return sum;
  }

  private long inDoubt(int hole) {
    if (net.methods[hole].length < 2) {
      return 0;
    }
    boolean bores = task.capacity.dependsOnMethod(hole);
    long sum = bores && draft.holeExtra(hole) < Network.SHUT ? draft.holeExtra(hole) : 0;
    for (int w : net.methods[hole][draft.method[hole]]) {
      sum += net.workPrice[w];
    }
    return sum;
  }

  private void settle() {
    effort.take(SETTLING);
    new MethodsExact(draft).settle();
    boolean allowed = Arrays.stream(draft.openHoles()).allMatch(this::allowed);
    if (allowed && draft.price() < below) {
      best = draft.save();
      below = best.price();
    }
  }

  private boolean allowed(int hole) {
    int[][] methods = net.methods[hole];
    return methods.length == 0
        || Arrays.stream(methods[draft.method[hole]]).noneMatch(w -> net.workShut[w]);
  }
}
