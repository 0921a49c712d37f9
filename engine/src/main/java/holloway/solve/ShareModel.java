package holloway.solve;

import java.util.Arrays;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;

/**
 * The bound as the known paths show it: shares that make the sum of all groups' soft minima as
 * large as the prices of the works allow, by an accelerated gradient method with restarts (Nesterov
 * 2005, smooth minimisation of non-smooth functions; O'Donoghue and Candes 2015 for the restart).
 */
final class ShareModel {
  /** Steps between two looks at all paths; in between the far ones are left out. */
  private static final int LOOK_AGAIN = 25;

  /** Lower than the best by so many temperatures a group is more than the swing of the method. */
  private static final double FALLEN = 8;

  /** A gain below this part of that swing is none; three looks with none in a row end it. */
  private static final double IDLE = 1 / 80.0;

  /** So few groups are not worth a second thread. */
  private static final int FEW = 3;

  /** From so many shares on a second thread brings rows within their limits faster. */
  private static final int MANY = 20_000;

  private final Shares shares;
  private final RowLimits limits;
  private final GroupModel[] groups;

  private final int[] rows;
  private final int[][] rowPairs;
  private final int[] groupOf;
  private final int[] placeOf;
  private final double[] x;
  private final double[] slope;

  /** By group: its soft minimum where the slope was last looked at. */
  private final double[] soft;

  private final int longest;

  private final int[][] liftPairs;

  /** Rows by number here: those that lend or stand alone, then those that are lifted. */
  private final int[] plain;

  private final int[] lifted;
  private final ModelRents rents;

  private record Point(double value, double[] x, double[] rent) {}

  private final double[] ahead;
  private final double[] next;
  private double momentum;
  private Point best;

  /**
   * @param shares where to start; rows that no known path meets are left as they are
   */
  ShareModel(Shares shares, PathPool[] pools) {
    this.shares = shares;
    limits = shares.rowLimits();
    SharePairs pairs = new SharePairs(shares, pools);
    rows = pairs.rows;
    rowPairs = pairs.rowPairs;
    groupOf = pairs.groupOf;
    placeOf = pairs.placeOf;
    liftPairs = pairs.liftPairs;
    plain = IntStream.range(0, rows.length).filter(r -> liftPairs[r].length == 0).toArray();
    lifted = IntStream.range(0, rows.length).filter(r -> liftPairs[r].length > 0).toArray();
    x = new double[groupOf.length];
    Arrays.setAll(
        x,
        k ->
            groupOf[k] == SharePairs.LIFT
                ? shares.lift[placeOf[k]]
                : shares.units[groupOf[k]][placeOf[k]]);
    slope = new double[x.length];
    soft = new double[pools.length];
    groups = new GroupModel[pools.length];
    int most = 1;
    for (int g = 0; g < groups.length; g++) {
      groups[g] = new GroupModel(pools[g], pairs.pairOf[g]);
      for (PathPool.Column c : pools[g].columns) {
        most = Math.max(most, c.places().length + 2 * c.menus().length);
      }
    }
    longest = most;
    rents = new ModelRents(shares, rows);
    ahead = new double[x.length];
    next = new double[x.length];
  }

  /** The slope at a point; each group has entries of its own, so threads do not meet. */
  private void look(double[] at, double temperature) {
    Arrays.fill(slope, 0);
    everyGroup(g -> soft[g] = groups[g].addSlope(at, temperature, slope));
    rents.clearSlope();
    for (int r = 0; r < rows.length; r++) {
      if (rents.has(r)) {
        rents.wanted(r, wanted(r));
      }
    }
    rents.takeRoom();
    // What is lent is worth as much as the hole would have to be made often.
    for (int r = 0; r < rows.length; r++) {
      for (int lift : liftPairs[r]) {
        slope[lift] = wanted(r) / rents.fits(r);
      }
    }
  }

  /** How many cables pass where the row is charged. */
  private double wanted(int row) {
    double sum = 0;
    for (int k : rowPairs[row]) {
      boolean pays = groupOf[k] >= 0 && shares.places.pays(rows[row], groupOf[k]);
      sum += pays ? shares.size(groupOf[k]) * slope[k] : 0;
    }
    return sum;
  }

  private void everyGroup(IntConsumer task) {
    IntStream all = IntStream.range(0, groups.length);
    (groups.length > FEW ? all.parallel() : all).forEach(task);
  }

  /**
   * @param temperature in units; the model lies below the true least by at most this times the
   *     logarithm of the number of paths
   */
  void raise(int steps, double temperature, double stride) {
    raise(steps, temperature, stride, () -> false);
  }

  /**
   * The same, with fewer steps once it is over; the shares are within their limits all the time,
   * and never worse than where they started. Where they have become much worse than the best so far
   * (a far path came near before it was looked at again), it starts anew from those with smaller
   * steps.
   */
  void raise(int steps, double temperature, double stride, BooleanSupplier over) {
    double swing = groups.length * temperature * FALLEN;
    double step = stride * temperature / longest;
    best = null;
    int idle = 0;
    restart();
    for (int i = 0; i < steps && (i == 0 || i % LOOK_AGAIN > 0 || !over.getAsBoolean()); i++) {
      if (i % LOOK_AGAIN == 0) {
        double value = valueAt(temperature);
        idle = best != null && value - best.value < swing * IDLE ? idle + 1 : 0;
        if (idle >= 3) {
          break;
        }
        if (best == null || value >= best.value) {
          best = new Point(value, x.clone(), rents.copy());
        } else if (value < best.value - swing) {
          back();
          step /= 2;
        }
        everyGroup(g -> groups[g].refresh(ahead, temperature));
      }
      look(ahead, temperature);
      step(step);
    }
    double value = valueAt(temperature);
    if (value < best.value) {
      back();
      valueAt(temperature);
    }
  }

  private void restart() {
    System.arraycopy(x, 0, ahead, 0, x.length);
    rents.restart();
    momentum = 1;
  }

  private void back() {
    System.arraycopy(best.x, 0, x, 0, x.length);
    rents.back(best.rent);
    restart();
  }

  private void step(double step) {
    for (int k = 0; k < x.length; k++) {
      next[k] = ahead[k] + step * slope[k];
    }
    rents.step(step);
    projectRows(plain);
    projectRows(lifted);
    double along = 0;
    for (int k = 0; k < x.length; k++) {
      along += slope[k] * (next[k] - x[k]);
    }
    along = rents.along(along);
    double later = along < 0 ? 1 : (1 + Math.sqrt(1 + 4 * momentum * momentum)) / 2;
    double carry = along < 0 ? 0 : (momentum - 1) / later;
    carryOn(x, next, ahead, carry);
    rents.carryOn(carry);
    momentum = later;
  }

  /** Rows have no share in common, so threads do not meet here either; those that lend go first. */
  private void projectRows(int[] some) {
    if (x.length > MANY) {
      Arrays.stream(some).parallel().forEach(this::projectRow);
    } else {
      for (int r : some) {
        projectRow(r);
      }
    }
  }

  private void projectRow(int r) {
    double higher = rents.lifts(r);
    for (int k : liftPairs[r]) {
      higher += next[k];
    }
    limits.project(rows[r], next, rowPairs[r], groupOf, higher);
  }

  /** The next point to look at lies a way beyond the new one, as seen from the old. */
  static void carryOn(double[] old, double[] next, double[] ahead, double carry) {
    for (int k = 0; k < old.length; k++) {
      ahead[k] = next[k] + carry * (next[k] - old[k]);
      old[k] = next[k];
    }
  }

  /** Looks at all known paths, near or far: what the shares here would prove if these were all. */
  double valueAt(double temperature) {
    everyGroup(g -> groups[g].refresh(x, temperature));
    look(x, temperature);
    return value();
  }

  /** What the shares found would prove if there were no other paths than the known ones. */
  double value() {
    return Arrays.stream(soft).sum() - rents.sum();
  }

  /** Puts the shares found into others of the same rows, in whole units. */
  void writeTo(Shares out) {
    for (int k = 0; k < x.length; k++) {
      if (groupOf[k] == SharePairs.LIFT) {
        out.lift[placeOf[k]] = (long) Math.floor(x[k]);
      } else {
        out.units[groupOf[k]][placeOf[k]] = (long) Math.floor(x[k]);
      }
    }
    rents.writeTo(out);
    out.projectAll();
  }

  /** By work: the largest part of a group that uses it at one place. */
  double[] often(int works) {
    double[] out = new double[works];
    for (int k = 0; k < x.length; k++) {
      if (groupOf[k] == SharePairs.LIFT) {
        continue;
      }
      Places.Place p = shares.places.places.get(placeOf[k]);
      if (!p.isRoom()) {
        out[p.work()] = Math.max(out[p.work()], slope[k]);
      }
    }
    return out;
  }
}
