package holloway.solve;

import java.util.Arrays;

/**
 * How much of each work every group of runs pays at each place: whole units, never negative. A row
 * keeps within a limit: for a common row all shares together are at most the work's price; for the
 * own work of a hole the n largest shares of single cables are at most what the hole costs with n
 * cables, for every n that fits, and the rent of the hole. Rents are what it is worth to pass where
 * more would like to than fit; the bound is less by all of them.
 */
final class Shares {
  final Places places;

  /** Units by group and place. */
  final long[][] units;

  /** Units by class of cables and hole, see {@link Places#rentOf}. */
  final long[] rent;

  /** Units by number of a lift, see {@link Lifts}. */
  final long[] lift;

  private final long[] rowPrice;
  private final int[] rowOf;
  private final int[] size;
  private final boolean[] prepaid;
  private RowLimits rowLimits;

  /**
   * @param size number of runs in each group
   */
  Shares(Places places, int[] size) {
    this(
        places,
        places.rowPrice.stream().mapToLong(Long::longValue).toArray(),
        places.rowOf.stream().mapToInt(Integer::intValue).toArray(),
        size,
        new boolean[places.rowPrice.size()],
        new long[size.length][places.places.size()],
        new long[places.rents()],
        new long[places.lifts().list.size()]);
  }

  private Shares(
      Places places,
      long[] rowPrice,
      int[] rowOf,
      int[] size,
      boolean[] prepaid,
      long[][] units,
      long[] rent,
      long[] lift) {
    this.rent = rent;
    this.lift = lift;
    this.places = places;
    this.units = units;
    this.rowPrice = rowPrice;
    this.rowOf = rowOf;
    this.size = size;
    this.prepaid = prepaid;
  }

  int row(int place) {
    return rowOf[place];
  }

  /** What may be shared of a common row: the work's price, nothing once it is prepaid. */
  long price(int row) {
    return prepaid[row] ? 0 : rowPrice[row];
  }

  /** These shares for plans that pay the work anyway. */
  Shares prepaid(int work) {
    Shares out = copy();
    for (int r = 0; r < rowPrice.length; r++) {
      Places.Place p = places.places.get(places.rowMembers()[r][0]);
      if (!p.isRoom() && p.work() == work) {
        out.prepaid[r] = true;
      }
    }
    out.projectAll();
    return out;
  }

  /** What the n largest shares of a hole's row may be; null for a common row. */
  long[] limit(int row) {
    long[] limit = places.limit(row);
    if (limit != null && prepaid[row]) {
      limit = limit.clone();
      for (int n = 0; n < limit.length; n++) {
        limit[n] -= rowPrice[row];
      }
    }
    return limit;
  }

  /** By how much the limit of a hole's row is higher: its rent, and what is lent to it. */
  private long higher(int row) {
    int at = places.rentOf(row);
    long sum = at < 0 ? 0 : rent[at];
    for (int l : places.lifts().lentTo(row)) {
      sum = Math.addExact(sum, lift[l]);
    }
    return sum;
  }

  /** Brings all rows within their limits: first those that lend, then those that are lifted. */
  void projectAll() {
    for (int r = 0; r < rows(); r++) {
      if (places.limit(r) == null) {
        project(r);
      }
    }
    for (int r = 0; r < rows(); r++) {
      if (places.limit(r) != null) {
        project(r);
      }
    }
  }

  /** What the bound pays back. */
  long rents() {
    long sum = 0;
    for (long r : rent) {
      sum = Math.addExact(sum, r);
    }
    return sum;
  }

  /** Number of runs in a group. */
  int size(int group) {
    return size[group];
  }

  /** Number of runs by group. */
  int[] sizes() {
    return size;
  }

  int rows() {
    return rowPrice.length;
  }

  void copyFrom(Shares other) {
    for (int g = 0; g < units.length; g++) {
      System.arraycopy(other.units[g], 0, units[g], 0, units[g].length);
    }
    System.arraycopy(other.rent, 0, rent, 0, rent.length);
    System.arraycopy(other.lift, 0, lift, 0, lift.length);
  }

  Shares copy() {
    long[][] same = new long[units.length][];
    for (int g = 0; g < units.length; g++) {
      same[g] = Arrays.copyOf(units[g], units[g].length);
    }
    return new Shares(
        places, rowPrice, rowOf, size, prepaid.clone(), same, rent.clone(), lift.clone());
  }

  /** The same rows with nothing shared out. */
  Shares none() {
    Shares out = copy();
    for (long[] u : out.units) {
      Arrays.fill(u, 0);
    }
    Arrays.fill(out.rent, 0);
    Arrays.fill(out.lift, 0);
    return out;
  }

  /** Brings a row back within its limit with as little change as is cheap to find. */
  void project(int row) {
    int[] members = places.rowMembers()[row];
    for (int p : members) {
      for (int g = 0; g < units.length; g++) {
        units[g][p] = places.pays(row, g) ? Math.max(0, units[g][p]) : 0;
      }
    }
    long[] limit = limit(row);
    if (limit == null) {
      long excess = total(row, members) - price(row);
      while (excess > 0) {
        excess = take(row, members, excess);
      }
    } else {
      projectHole(members[0], limit, higher(row));
    }
  }

  /** The same limits for shares that are not whole, worked out once. */
  RowLimits rowLimits() {
    if (rowLimits == null) {
      rowLimits = new RowLimits(this);
    }
    return rowLimits;
  }

  private void projectHole(int place, long[] limit, long rent) {
    HoleLimit each = new HoleLimit(limit, size);
    each.rent(rent);
    long[] value = new long[size.length];
    for (int g = 0; g < size.length; g++) {
      value[g] = Math.floorDiv(units[g][place] + size[g] - 1, size[g]);
    }
    if (each.project(value)) {
      for (int g = 0; g < size.length; g++) {
        units[g][place] = Math.min(units[g][place], value[g] * size[g]);
      }
    }
  }

  private long total(int row, int[] members) {
    long sum = 0;
    for (int l : places.lifts().lentBy(row)) {
      sum = Math.addExact(sum, lift[l]);
    }
    for (int p : members) {
      for (long[] u : units) {
        sum = Math.addExact(sum, u[p]);
      }
    }
    return sum;
  }

  private long take(int row, int[] members, long excess) {
    int[] lent = places.lifts().lentBy(row);
    int positive = 0;
    for (int l : lent) {
      positive += lift[l] > 0 ? 1 : 0;
    }
    for (int p : members) {
      for (long[] u : units) {
        positive += u[p] > 0 ? 1 : 0;
      }
    }
    long each = (excess + positive - 1) / positive;
    long left = excess;
    for (int l : lent) {
      long part = Math.min(left, Math.min(each, lift[l]));
      lift[l] -= part;
      left -= part;
    }
    for (int p : members) {
      for (long[] u : units) {
        long part = Math.min(left, Math.min(each, u[p]));
        u[p] -= part;
        left -= part;
      }
    }
    return left;
  }

  /** True if every row is within its limit; the last word before a bound is given out. */
  boolean valid() {
    for (int r = 0; r < rows(); r++) {
      int[] members = places.rowMembers()[r];
      for (int p : members) {
        for (int g = 0; g < units.length; g++) {
          if (units[g][p] < 0 || units[g][p] > 0 && !places.pays(r, g)) {
            return false;
          }
        }
      }
      long[] limit = limit(r);
      if (limit == null ? total(r, members) > price(r) : !holeValid(members[0], limit, higher(r))) {
        return false;
      }
    }
    return Arrays.stream(rent).noneMatch(r -> r < 0) && Arrays.stream(lift).noneMatch(l -> l < 0);
  }

  private boolean holeValid(int place, long[] limit, long rent) {
    long[] value = new long[size.length];
    for (int g = 0; g < size.length; g++) {
      value[g] = Math.floorDiv(units[g][place] + size[g] - 1, size[g]);
    }
    HoleLimit each = new HoleLimit(limit, size);
    each.rent(rent);
    return each.mostBroken(value) == 0;
  }
}
