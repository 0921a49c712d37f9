package holloway.solve;

import java.util.Arrays;
import java.util.List;

/**
 * The bound of one set of zones, raised by projected subgradient steps on the shares: a group that
 * uses a work gets more of its price to pay, what exceeds the price is taken from all who pay.
 */
final class BoundPart {
  private static final double KEEP = 0.6;
  private static final double LEAST = 0.05;
  private static final int PATIENCE = 12;

  private final List<Groups.Group> groups;
  private final GroupPaths paths;
  private final Shares shares;
  private final double[][] direction;
  private final long target;
  private Shares best;
  private long bestValue = Long.MIN_VALUE;
  private boolean impossible;
  private double boldness = 1.0;
  private int sinceBetter;

  /**
   * @param target value to aim at: what a better plan would have to undercut
   */
  BoundPart(List<Groups.Group> groups, GroupPaths paths, Shares start, long target) {
    this.groups = groups;
    this.paths = paths;
    this.shares = start;
    this.target = target;
    direction = new double[groups.size()][start.places.places.size()];
  }

  /** The best value proved so far, without prepaid works. */
  long value() {
    return bestValue;
  }

  boolean impossible() {
    return impossible;
  }

  Shares best() {
    return best;
  }

  void release() {
    paths.release();
  }

  long looks() {
    return paths.looks();
  }

  /** Some more steps; stops early once the target is reached. */
  void step(int steps) {
    for (int i = 0; i < steps && !impossible && bestValue < target; i++) {
      once();
    }
  }

  private void once() {
    int[][] used = new int[groups.size()][];
    long value = 0;
    for (int g = 0; g < used.length; g++) {
      Path p = paths.find(g, shares.units[g]);
      if (p == null) {
        impossible = true;
        return;
      }
      value = Math.addExact(value, p.price());
      used[g] = paths.paid(p, shares.units[g]);
    }
    remember(value);
    move(used, value);
  }

  private void remember(long value) {
    if (value > bestValue) {
      bestValue = value;
      if (best == null) {
        best = shares.copy();
      } else {
        best.copyFrom(shares);
      }
      sinceBetter = 0;
    } else if (++sinceBetter >= PATIENCE) {
      boldness *= 0.6;
      sinceBetter = 0;
      takeBack();
      for (double[] d : direction) {
        Arrays.fill(d, 0);
      }
    }
  }

  private void takeBack() {
    for (int g = 0; g < shares.units.length; g++) {
      for (int p = 0; p < shares.units[g].length; p++) {
        if (shares.units[g][p] != best.units[g][p]) {
          shares.units[g][p] = best.units[g][p];
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
          norm += d[p] * d[p] * shares.price(r);
        }
      }
    }
    double step = norm == 0 ? 0 : boldness * Math.max(1, target - value) / norm;
    for (int r = 0; r < touched.length; r++) {
      if (touched[r]) {
        moveRow(r, step);
      }
    }
  }

  private void moveRow(int row, double step) {
    int[] members = shares.places.rowMembers()[row];
    long price = shares.price(row);
    long[] before = new long[members.length * groups.size()];
    int at = 0;
    for (int p : members) {
      for (int g = 0; g < direction.length; g++) {
        before[at++] = shares.units[g][p];
        shares.units[g][p] += Math.round(Math.min(2.0, step * direction[g][p]) * price);
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
}
