package holloway.solve;

import java.util.Arrays;

/**
 * How much of each work every group of runs pays at each place: whole units, never negative, and
 * never more than the work's price in one row.
 */
final class Shares {
  final Places places;

  /** Units by group and place. */
  final long[][] units;

  private final long[] rowPrice;
  private final int[] rowOf;

  Shares(Places places, int groups) {
    this.places = places;
    units = new long[groups][places.places.size()];
    rowPrice = places.rowPrice.stream().mapToLong(Long::longValue).toArray();
    rowOf = places.rowOf.stream().mapToInt(Integer::intValue).toArray();
  }

  int row(int place) {
    return rowOf[place];
  }

  long price(int row) {
    return rowPrice[row];
  }

  int rows() {
    return rowPrice.length;
  }

  void copyFrom(Shares other) {
    for (int g = 0; g < units.length; g++) {
      System.arraycopy(other.units[g], 0, units[g], 0, units[g].length);
    }
  }

  /** Takes the same from every positive share of a row until the row is within its price. */
  void project(int row) {
    int[] members = places.rowMembers()[row];
    long excess = -rowPrice[row];
    for (int p : members) {
      for (long[] u : units) {
        u[p] = Math.max(0, u[p]);
        excess = Math.addExact(excess, u[p]);
      }
    }
    while (excess > 0) {
      excess = take(members, excess);
    }
  }

  private long take(int[] members, long excess) {
    int positive = 0;
    for (int p : members) {
      for (long[] u : units) {
        positive += u[p] > 0 ? 1 : 0;
      }
    }
    long each = (excess + positive - 1) / positive;
    long left = excess;
    for (int p : members) {
      for (long[] u : units) {
        long part = Math.min(left, Math.min(each, u[p]));
        u[p] -= part;
        left -= part;
      }
    }
    return left;
  }

  /** True if every row is within its price; the last word before a bound is given out. */
  boolean valid() {
    for (int r = 0; r < rows(); r++) {
      long sum = 0;
      for (int p : places.rowMembers()[r]) {
        for (long[] u : units) {
          if (u[p] < 0) {
            return false;
          }
          sum = Math.addExact(sum, u[p]);
        }
      }
      if (sum > rowPrice[r]) {
        return false;
      }
    }
    return true;
  }

  Shares copy() {
    Shares out = new Shares(places, rowPrice, rowOf, new long[units.length][]);
    for (int g = 0; g < units.length; g++) {
      out.units[g] = Arrays.copyOf(units[g], units[g].length);
    }
    return out;
  }

  private Shares(Places places, long[] rowPrice, int[] rowOf, long[][] units) {
    this.places = places;
    this.units = units;
    this.rowPrice = rowPrice;
    this.rowOf = rowOf;
  }
}
