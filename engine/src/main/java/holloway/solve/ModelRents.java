package holloway.solve;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * Rents of the holes that may be wanted by more cables than fit, as {@link ShareModel} raises them:
 * where they are, where the method looks next, and how much a rent is worth there.
 */
final class ModelRents {
  /** By hole here: its rent's place in the shares. */
  private final int[] holes;

  /** By row: the rent that lifts it, or −1. */
  private final int[] rentAt;

  /** By hole here: how many fit the way most do. */
  private final int[] room;

  /** By row: how many fit by the methods that charge there, 0 where nothing limits them. */
  private final int[] fits;

  private final double[] now;
  private final double[] slope;
  private final double[] ahead;
  private final double[] next;

  ModelRents(Shares shares, int[] rows) {
    rentAt = new int[rows.length];
    fits = new int[rows.length];
    IntList narrow = new IntList();
    Map<Integer, Integer> known = new HashMap<>();
    for (int i = 0; i < rows.length; i++) {
      int at = shares.places.rentOf(rows[i]);
      if (at >= 0 && known.putIfAbsent(at, narrow.size()) == null) {
        narrow.add(at);
      }
      rentAt[i] = at < 0 ? -1 : known.get(at);
      fits[i] = at < 0 ? 0 : shares.places.limit(rows[i]).length;
    }
    holes = narrow.toArray();
    room = new int[holes.length];
    for (int i = 0; i < rows.length; i++) {
      if (rentAt[i] >= 0) {
        room[rentAt[i]] = Math.max(room[rentAt[i]], fits[i]);
      }
    }
    now = new double[holes.length];
    Arrays.setAll(now, h -> shares.rent[holes[h]]);
    slope = new double[holes.length];
    ahead = new double[holes.length];
    next = new double[holes.length];
  }

  /** A rent lifts the row, and its methods are limited. */
  boolean has(int row) {
    return rentAt[row] >= 0 && fits[row] > 0;
  }

  /** How many cables fit by the methods that charge the row, at least one. */
  int fits(int row) {
    return Math.max(1, fits[row]);
  }

  /** Forgets the slope, before what is wanted of each row is told. */
  void clearSlope() {
    Arrays.fill(slope, 0);
  }

  /**
   * So many cables pass where the row that {@link #has} a rent is charged: the rent is worth as
   * much as more would pass than fit.
   */
  void wanted(int row, double cables) {
    slope[rentAt[row]] += cables * room[rentAt[row]] / fits[row];
  }

  /** Ends what {@link #wanted} began. */
  void takeRoom() {
    for (int h = 0; h < holes.length; h++) {
      slope[h] -= room[h];
    }
  }

  /** The next point to look at is where the rents are. */
  void restart() {
    System.arraycopy(now, 0, ahead, 0, now.length);
  }

  double[] copy() {
    return now.clone();
  }

  void back(double[] kept) {
    System.arraycopy(kept, 0, now, 0, now.length);
  }

  void step(double step) {
    for (int h = 0; h < now.length; h++) {
      next[h] = Math.max(0, ahead[h] + step * slope[h]);
    }
  }

  /** How much higher than a work's own price the row's shares may be after the step. */
  double lifts(int row) {
    return rentAt[row] < 0 ? 0 : next[rentAt[row]];
  }

  /** How far the step went along the slope, added to what the shares did. */
  double along(double sum) {
    double along = sum;
    for (int h = 0; h < now.length; h++) {
      along += slope[h] / room[h] * (next[h] - now[h]);
    }
    return along;
  }

  void carryOn(double carry) {
    ShareModel.carryOn(now, next, ahead, carry);
  }

  double sum() {
    return Arrays.stream(now).sum();
  }

  /** Puts the rents into the shares, in whole units. */
  void writeTo(Shares out) {
    for (int h = 0; h < holes.length; h++) {
      out.rent[holes[h]] = (long) Math.floor(now[h]);
    }
  }
}
