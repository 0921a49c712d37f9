package holloway.solve;

/**
 * The limits of {@link Shares} for shares that are not whole: nearest points, and no allocation
 * that can be had once. Several threads may bring rows within their limits, each another row.
 */
final class RowLimits {
  private static final long NOT_COMMON = -1;

  private final Shares shares;
  private final Places places;
  private final int[] size;

  /** By row: what all shares of it together may be, or {@link #NOT_COMMON}. */
  private final long[] common;

  private final HoleLimit[] holeLimits;

  RowLimits(Shares shares) {
    this.shares = shares;
    places = shares.places;
    size = shares.sizes();
    holeLimits = new HoleLimit[shares.rows()];
    common = new long[shares.rows()];
    for (int r = 0; r < common.length; r++) {
      long[] limit = shares.limit(r);
      boolean flat = limit == null || new HoleLimit(limit, size).isFlat();
      common[r] = !flat ? NOT_COMMON : limit == null ? shares.price(r) : limit[0];
    }
  }

  /**
   * Brings a row of shares kept elsewhere within its limit: to the nearest point for a common row.
   *
   * @param at numbers of all shares of the row that may be more than nothing
   * @param group by number of a share, negative for a lift that a common row lends
   * @param rent by how much the limit of a hole is higher, 0 for a common row
   */
  void project(int row, double[] x, int[] at, int[] group, double rent) {
    double sum = 0;
    for (int k : at) {
      x[k] = group[k] < 0 || places.pays(row, group[k]) ? Math.max(0, x[k]) : 0;
      sum += x[k];
    }
    // What all shares of the row together may be.
    if (common[row] != NOT_COMMON) {
      lower(x, at, sum, common[row] + Math.floor(rent));
    } else if (sum > 0 && rent < 1 && nothing(row)) {
      for (int k : at) {
        x[k] = 0;
      }
    } else if (sum > 0) {
      HoleLimit hole = holeLimit(row);
      long[] value = hole.scratch();
      for (int k : at) {
        value[group[k]] = (long) Math.ceil(x[k] / size[group[k]]);
      }
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
      holeLimits[row] = new HoleLimit(shares.limit(row), size);
    }
    return holeLimits[row];
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
}
