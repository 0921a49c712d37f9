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
  private static final long NOT_COMMON = -1;

  final Places places;

  /** Units by group and place. */
  final long[][] units;

  /** Units by class of cables and hole, see {@link Places#rentOf}. */
  final long[] rent;

  private final long[] rowPrice;
  private final int[] rowOf;
  private final int[] size;
  private final boolean[] prepaid;
  private long[] common;

  /** By row; each is used by one thread at a time. */
  private HoleLimit[] holeLimits;

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
        new long[places.rents()]);
  }

  private Shares(
      Places places,
      long[] rowPrice,
      int[] rowOf,
      int[] size,
      boolean[] prepaid,
      long[][] units,
      long[] rent) {
    this.rent = rent;
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
        out.project(r);
      }
    }
    return out;
  }

  private long[] limit(int row) {
    long[] limit = places.limit(row);
    if (limit != null && prepaid[row]) {
      limit = limit.clone();
      for (int n = 0; n < limit.length; n++) {
        limit[n] -= rowPrice[row];
      }
    }
    return limit;
  }

  private long rentOf(int row) {
    int at = places.rentOf(row);
    return at < 0 ? 0 : rent[at];
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

  int rows() {
    return rowPrice.length;
  }

  void copyFrom(Shares other) {
    for (int g = 0; g < units.length; g++) {
      System.arraycopy(other.units[g], 0, units[g], 0, units[g].length);
    }
    System.arraycopy(other.rent, 0, rent, 0, rent.length);
  }

  Shares copy() {
    long[][] same = new long[units.length][];
    for (int g = 0; g < units.length; g++) {
      same[g] = Arrays.copyOf(units[g], units[g].length);
    }
    return new Shares(places, rowPrice, rowOf, size, prepaid.clone(), same, rent.clone());
  }

  /** The same rows with nothing shared out. */
  Shares none() {
    Shares out = copy();
    for (long[] u : out.units) {
      Arrays.fill(u, 0);
    }
    Arrays.fill(out.rent, 0);
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
      long excess = total(members) - price(row);
      while (excess > 0) {
        excess = take(members, excess);
      }
    } else {
      projectHole(members[0], limit, rentOf(row));
    }
  }

  /**
   * The same for shares that are not whole, kept elsewhere: the nearest point for a common row.
   * Only once it is {@link #ready}.
   *
   * @param at numbers of all shares of the row that may be more than nothing
   * @param group by number of a share
   * @param rent of the row's hole, 0 for a common row
   */
  void project(int row, double[] x, int[] at, int[] group, double rent) {
    double sum = 0;
    for (int k : at) {
      x[k] = places.pays(row, group[k]) ? Math.max(0, x[k]) : 0;
      sum += x[k];
    }
    // What all shares of the row together may be.
    if (common[row] != NOT_COMMON) {
      lower(x, at, sum, common[row]);
    } else if (sum > 0 && rent < 1 && nothing(row)) {
      for (int k : at) {
        x[k] = 0;
      }
    } else if (sum > 0) {
      long[] value = new long[size.length];
      for (int k : at) {
        value[group[k]] = (long) Math.ceil(x[k] / size[group[k]]);
      }
      HoleLimit hole = holeLimit(row);
      hole.rent((long) Math.floor(rent));
      hole.project(value);
      for (int k : at) {
        x[k] = Math.min(x[k], value[group[k]] * size[group[k]]);
      }
    }
  }

  /** Room that costs nothing up to the last cable that fits: only its rent can be shared. */
  private boolean nothing(int row) {
    long[] limit = places.limit(row);
    return places.places.get(places.rowMembers()[row][0]).isRoom()
        && limit.length > 0
        && limit[limit.length - 1] == 0;
  }

  /** Asked for thousands of times a row, and the same each time. */
  private HoleLimit holeLimit(int row) {
    if (holeLimits[row] == null) {
      holeLimits[row] = new HoleLimit(limit(row), size);
    }
    return holeLimits[row];
  }

  /** Works out the limits of all rows, so that several threads may then bring rows within them. */
  void ready() {
    if (common == null) {
      holeLimits = new HoleLimit[rowPrice.length];
      common = new long[rowPrice.length];
      for (int r = 0; r < common.length; r++) {
        long[] limit = limit(r);
        boolean flat = limit == null || new HoleLimit(limit, size).isFlat();
        common[r] = !flat ? NOT_COMMON : limit == null ? price(r) : limit[0];
      }
    }
  }

  /** Takes the same from all that are above nothing until the sum is at most the price. */
  private static void lower(double[] x, int[] at, double total, double price) {
    double sum = total;
    while (sum > price) {
      int positive = 0;
      for (int k : at) {
        positive += x[k] > 0 ? 1 : 0;
      }
      double each = (sum - price) / positive;
      boolean whole = true;
      sum = 0;
      for (int k : at) {
        if (x[k] > 0) {
          x[k] -= each;
          whole &= x[k] >= 0;
          x[k] = Math.max(0, x[k]);
          sum += x[k];
        }
      }
      if (whole) {
        return;
      }
    }
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

  private long total(int[] members) {
    long sum = 0;
    for (int p : members) {
      for (long[] u : units) {
        sum = Math.addExact(sum, u[p]);
      }
    }
    return sum;
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
      if (limit == null ? total(members) > price(r) : !holeValid(members[0], limit, rentOf(r))) {
        return false;
      }
    }
    return Arrays.stream(rent).noneMatch(r -> r < 0);
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
