package holloway.solve;

import java.util.Arrays;

/** Works that are met at a single node, or on a single edge (itself or through its holes). */
final class Directions {
  private static final int NOWHERE = -1;
  private static final int SEVERAL = -2;

  private Directions() {}

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
