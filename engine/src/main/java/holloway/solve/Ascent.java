package holloway.solve;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Raises the bound of a part by projected subgradient steps on the shares: a group that uses a work
 * gets more of its price to pay, what exceeds the limit is taken from all who pay.
 */
final class Ascent {
  private static final double KEEP = 0.6;
  private static final double LEAST = 0.05;
  private static final int PATIENCE = 10;
  private static final int CANDIDATES = 4;

  private final List<Groups.Group> groups;
  private final GroupPaths paths;
  private final BoundPart part;
  private final Shares shares;
  private final double[][] direction;
  private final int[][] uses;
  private final long target;
  private int sinceBetter;
  private int steps;

  /**
   * @param target value to aim at, without what the part pays anyway
   */
  Ascent(BoundPart part, List<Groups.Group> groups, GroupPaths paths, long target) {
    this.part = part;
    this.groups = groups;
    this.paths = paths;
    this.target = target;
    shares = part.best.copy();
    int places = shares.places.places.size();
    direction = new double[groups.size()][places];
    uses = new int[groups.size()][places];
  }

  /** Some steps; stops early once the target is reached or the part turns out impossible. */
  void run(int most) {
    long before = part.value;
    // Where each direction has shares of its own, long runs of small steps get there; else parts
    // help.
    long patience = shares.places.directed ? 25 : 8;
    if (!shares.places.directed) {
      takeBack();
    }
    steps = 0;
    for (int[] use : uses) {
      Arrays.fill(use, 0);
    }
    for (int i = 0; i < most && !part.impossible && part.value < target; i++) {
      once();
    }
    part.stalled =
        before != Long.MIN_VALUE && part.value - before < (target - part.value) / patience;
    part.candidates = candidates();
    part.often = often();
  }

  /** By work: the largest part of the steps in which one group used it. */
  private double[] often() {
    double[] out = new double[part.works()];
    for (int[] use : uses) {
      for (int p = 0; p < use.length; p++) {
        int work = shares.places.places.get(p).work();
        out[work] = Math.max(out[work], use[p] / (double) Math.max(1, steps));
      }
    }
    return out;
  }

  private void once() {
    int[][] used = new int[groups.size()][];
    Path[] found = new Path[groups.size()];
    IntStream.range(0, used.length)
        .parallel()
        .forEach(
            g -> {
              found[g] = paths.find(g, shares.units[g]);
              used[g] = found[g] == null ? null : paths.paid(found[g], shares.units[g]);
            });
    long value = 0;
    for (int g = 0; g < used.length; g++) {
      if (found[g] == null) {
        part.impossible = true;
        return;
      }
      value = Math.addExact(value, found[g].price());
      for (int place : used[g]) {
        uses[g][place]++;
      }
    }
    steps++;
    remember(value);
    move(used, value);
  }

  private void remember(long value) {
    if (value > part.value) {
      part.value = value;
      part.best.copyFrom(shares);
      sinceBetter = 0;
    } else if (++sinceBetter >= PATIENCE) {
      part.boldness *= 0.6;
      sinceBetter = 0;
      takeBack();
    }
  }

  private void takeBack() {
    for (int g = 0; g < shares.units.length; g++) {
      for (int p = 0; p < shares.units[g].length; p++) {
        direction[g][p] = 0;
        if (shares.units[g][p] != part.best.units[g][p]) {
          shares.units[g][p] = part.best.units[g][p];
          paths.changed(g, p);
        }
      }
    }
  }

  private void move(int[][] used, long value) {
    for (int g = 0; g < used.length; g++) {
      double[] d = direction[g];
      for (int p = 0; p < d.length; p++) {
        d[p] = d[p] < LEAST ? 0 : KEEP * d[p];
      }
      for (int p : used[g]) {
        d[p] += 1;
      }
    }
    double norm = 0;
    boolean[] touched = new boolean[shares.rows()];
    for (double[] d : direction) {
      for (int p = 0; p < d.length; p++) {
        if (d[p] > 0) {
          int r = shares.row(p);
          touched[r] = true;
          norm += d[p] * d[p] * shares.scale(r);
        }
      }
    }
    double step = norm == 0 ? 0 : part.boldness * Math.max(1, target - value) / norm;
    for (int r = 0; r < touched.length; r++) {
      if (touched[r]) {
        moveRow(r, step);
      }
    }
  }

  private void moveRow(int row, double step) {
    int[] members = shares.places.rowMembers()[row];
    long scale = shares.scale(row);
    long[] before = new long[members.length * groups.size()];
    int at = 0;
    for (int p : members) {
      for (int g = 0; g < direction.length; g++) {
        before[at++] = shares.units[g][p];
        shares.units[g][p] += Math.round(Math.min(2.0, step * direction[g][p]) * scale);
      }
    }
    shares.project(row);
    at = 0;
    for (int p : members) {
      for (int g = 0; g < direction.length; g++) {
        if (shares.units[g][p] != before[at++]) {
          paths.changed(g, p);
        }
      }
    }
  }

  /** Works in use whose price the paths paid least of; a whole plan would pay all of it. */
  private int[] candidates() {
    TreeMap<Integer, Double> paid = new TreeMap<>();
    TreeMap<Integer, Double> most = new TreeMap<>();
    for (int g = 0; g < uses.length; g++) {
      for (int p = 0; p < uses[g].length; p++) {
        if (uses[g][p] > 0) {
          int work = shares.places.places.get(p).work();
          double often = uses[g][p] / (double) steps;
          paid.merge(work, often * part.best.units[g][p], Double::sum);
          most.merge(work, often, Math::max);
        }
      }
    }
    Comparator<Integer> worst =
        Comparator.comparingDouble(w -> -unpaid(w, paid.get(w), most.get(w)));
    return paid.keySet().stream()
        .filter(w -> !part.blocked.contains(w) && unpaid(w, paid.get(w), most.get(w)) > 1)
        .sorted(worst.thenComparing(Comparator.naturalOrder()))
        .limit(CANDIDATES)
        .mapToInt(Integer::intValue)
        .toArray();
  }

  private double unpaid(int work, double paid, double often) {
    double price = shares.places.priceOf(work);
    boolean settled = Places.has(part.prepaid, work);
    return settled || often < 0.1 ? 0 : price * Math.min(1, 1.5 * often) - paid;
  }
}
