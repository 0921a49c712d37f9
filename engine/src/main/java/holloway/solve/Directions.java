package holloway.solve;

import java.util.Arrays;

/** Whether shares may have directions, and which works can: met at one node or on one edge. */
final class Directions {
  private static final int NOWHERE = -1;
  private static final int SEVERAL = -2;

  private Directions() {}

  /**
   * Holes that cost something lie on one edge each, so that no path can meet one twice, and take
   * all runs at no extra, so that leaving limits out of the bound loses nothing.
   */
  static boolean mayDirect(Network net, int groups, LeastExtra least, int runs) {
    for (int h = 0; h < net.methods.length; h++) {
      boolean limited = limits(least.of(h), runs);
      for (boolean flexible : net.flexible[h]) {
        limited |= flexible && limits(least.of(h, true), runs);
      }
      boolean costs = Arrays.stream(net.methods[h]).anyMatch(m -> m.length > 0);
      if (limited || costs && net.holeEdges[h].length > 1) {
        return false;
      }
    }
    return 2L * net.edges * groups < 4_000_000;
  }

  private static boolean limits(long[] extra, int runs) {
    return extra.length < runs || runs > 0 && extra[runs - 1] > 0;
  }

  /** Works met at a single node, or on a single edge (itself or through its holes). */
  static boolean[] single(Network net) {
    int[] where = new int[net.workPrice.length];
    Arrays.fill(where, NOWHERE);
    for (int v = 0; v < net.nodes; v++) {
      for (int w : net.nodeWorks[v]) {
        meet(where, w, v);
      }
    }
    for (int e = 0; e < net.edges; e++) {
      if (net.edgeShut[e]) {
        continue;
      }
      for (int w : net.edgeWorks[e]) {
        meet(where, w, net.nodes + e);
      }
      for (int h : net.edgeHoles[e]) {
        for (int[] m : net.methods[h]) {
          for (int w : m) {
            meet(where, w, net.nodes + e);
          }
        }
      }
    }
    boolean[] out = new boolean[where.length];
    for (int w = 0; w < out.length; w++) {
      out[w] = where[w] >= 0;
    }
    return out;
  }

  private static void meet(int[] where, int work, int at) {
    where[work] = where[work] == NOWHERE || where[work] == at ? at : SEVERAL;
  }
}
