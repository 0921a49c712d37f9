package holloway.solve;

import java.util.Arrays;

/**
 * What a group pays at least, as a smooth function of its shares: over its known paths, and over
 * the methods of their holes, the soft minimum {@code -t log sum exp(-length / t)}, which is at
 * most the least and nears it as the temperature t falls. Its slope says how much of the group uses
 * each place, which is a fractional routing.
 */
final class GroupModel {
  /** Paths longer than the shortest by this many temperatures have no weight worth counting. */
  private static final double FAR = 25;

  /** The shares may move by as many temperatures before the far paths are looked at again. */
  private static final double DRIFT = 60;

  private final double[] travel;
  private final int[] first;
  private final int[] pair;
  private final int[] firstMenu;
  private final int[] menuAt;
  private final int[][][] menus;
  private final double[] length;
  private final double[] menuLength;
  private final double[] menuUse;
  private final int[] active;
  private int actives;

  /** Menus of the paths in view; nobody asks for the others. */
  private final int[] viewed;

  private int views;

  /**
   * @param pairOf for each place the number of the share of this group there
   */
  GroupModel(PathPool pool, int[] pairOf) {
    int n = pool.columns.size();
    travel = new double[n];
    first = new int[n + 1];
    firstMenu = new int[n + 1];
    for (int i = 0; i < n; i++) {
      first[i + 1] = first[i] + pool.columns.get(i).places().length;
      firstMenu[i + 1] = firstMenu[i] + pool.columns.get(i).menus().length;
    }
    pair = new int[first[n]];
    menuAt = new int[firstMenu[n]];
    for (int i = 0; i < n; i++) {
      PathPool.Column c = pool.columns.get(i);
      travel[i] = c.travel();
      for (int k = 0; k < c.places().length; k++) {
        pair[first[i] + k] = pairOf[c.places()[k]];
      }
      System.arraycopy(c.menus(), 0, menuAt, firstMenu[i], c.menus().length);
    }
    menus = new int[pool.menus.size()][][];
    for (int m = 0; m < menus.length; m++) {
      menus[m] =
          Arrays.stream(pool.menus.get(m))
              .map(at -> Arrays.stream(at).map(p -> pairOf[p]).toArray())
              .toArray(int[][]::new);
    }
    length = new double[n];
    menuLength = new double[menus.length];
    menuUse = new double[menus.length];
    active = new int[n];
    viewed = new int[menus.length];
  }

  /** Looks at all paths and keeps in view those that may count for a while. */
  void refresh(double[] x, double temperature) {
    for (int m = 0; m < menus.length; m++) {
      menuLength[m] = least(menus[m], x);
    }
    double least = Double.MAX_VALUE;
    for (int i = 0; i < length.length; i++) {
      length[i] = lengthOf(i, x);
      least = Math.min(least, length[i]);
    }
    actives = 0;
    for (int i = 0; i < length.length; i++) {
      if (length[i] <= least + (FAR + DRIFT) * temperature) {
        active[actives++] = i;
      }
    }
    view();
  }

  private void view() {
    Arrays.fill(menuUse, 0);
    for (int a = 0; a < actives; a++) {
      for (int k = firstMenu[active[a]]; k < firstMenu[active[a] + 1]; k++) {
        menuUse[menuAt[k]] = 1;
      }
    }
    views = 0;
    for (int m = 0; m < menus.length; m++) {
      if (menuUse[m] > 0) {
        viewed[views++] = m;
      }
    }
  }

  private double lengthOf(int column, double[] x) {
    double l = travel[column];
    for (int k = first[column]; k < first[column + 1]; k++) {
      l += x[pair[k]];
    }
    for (int k = firstMenu[column]; k < firstMenu[column + 1]; k++) {
      l += menuLength[menuAt[k]];
    }
    return l;
  }

  /**
   * Adds to the slope how much of the group uses each of its places at shares x.
   *
   * @return the soft minimum there
   */
  double addSlope(double[] x, double temperature, double[] slope) {
    for (int v = 0; v < views; v++) {
      menuLength[viewed[v]] = softest(menus[viewed[v]], x, temperature);
    }
    double least = Double.MAX_VALUE;
    for (int a = 0; a < actives; a++) {
      int i = active[a];
      length[i] = lengthOf(i, x);
      least = Math.min(least, length[i]);
    }
    double all = 0;
    for (int a = 0; a < actives; a++) {
      int i = active[a];
      double far = (length[i] - least) / temperature;
      length[i] = far > FAR ? 0 : StrictMath.exp(-far);
      all += length[i];
    }
    spread(x, temperature, slope, all);
    return least - temperature * StrictMath.log(all);
  }

  private void spread(double[] x, double temperature, double[] slope, double all) {
    for (int v = 0; v < views; v++) {
      menuUse[viewed[v]] = 0;
    }
    for (int a = 0; a < actives; a++) {
      int i = active[a];
      double weight = length[i] / all;
      if (weight > 0) {
        for (int k = first[i]; k < first[i + 1]; k++) {
          slope[pair[k]] += weight;
        }
        for (int k = firstMenu[i]; k < firstMenu[i + 1]; k++) {
          menuUse[menuAt[k]] += weight;
        }
      }
    }
    for (int v = 0; v < views; v++) {
      int m = viewed[v];
      for (int i = 0; menuUse[m] > 1e-9 && i < menus[m].length; i++) {
        int[] method = menus[m][i];
        double w = StrictMath.exp((menuLength[m] - sum(method, x)) / temperature) * menuUse[m];
        for (int p : method) {
          slope[p] += w;
        }
      }
    }
  }

  private static double least(int[][] methods, double[] x) {
    double least = Double.MAX_VALUE;
    for (int[] m : methods) {
      least = Math.min(least, sum(m, x));
    }
    return least;
  }

  private static double softest(int[][] methods, double[] x, double temperature) {
    double least = least(methods, x);
    double all = 0;
    for (int[] m : methods) {
      double far = (sum(m, x) - least) / temperature;
      all += far > FAR ? 0 : StrictMath.exp(-far);
    }
    return all == 1 ? least : least - temperature * StrictMath.log(all);
  }

  private static double sum(int[] at, double[] x) {
    double s = 0;
    for (int p : at) {
      s += x[p];
    }
    return s;
  }
}
