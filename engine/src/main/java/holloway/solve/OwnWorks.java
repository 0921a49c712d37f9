package holloway.solve;

import java.util.Arrays;

/**
 * Works that belong to one hole alone: in at most one piece to a method, at no node, edge or other
 * hole. The price of larger bits and a second bore is told to the first such work of each method.
 */
final class OwnWorks {
  private static final int NONE = -1;
  private static final int SHARED = -2;

  private OwnWorks() {}

  /** The hole a work tells the price of, or a negative number. */
  static int[] holeOf(Network net) {
    int[] hole = new int[net.workPrice.length];
    Arrays.fill(hole, NONE);
    for (int h = 0; h < net.methods.length; h++) {
      for (int[] m : net.methods[h]) {
        for (int w : m) {
          hole[w] = hole[w] == NONE || hole[w] == h ? h : SHARED;
        }
      }
    }
    for (int[] works : net.nodeWorks) {
      share(hole, works);
    }
    for (int[] works : net.edgeWorks) {
      share(hole, works);
    }
    boolean[] first = new boolean[hole.length];
    for (int[][] methods : net.methods) {
      for (int[] m : methods) {
        tell(hole, m, first);
      }
      if (toldTwice(methods, first)) {
        silence(methods, first);
      }
    }
    for (int w = 0; w < hole.length; w++) {
      hole[w] = first[w] ? hole[w] : NONE;
    }
    return hole;
  }

  /** A method with two tellers would count the larger bit twice. */
  private static boolean toldTwice(int[][] methods, boolean[] first) {
    for (int[] m : methods) {
      if (Arrays.stream(m).filter(w -> first[w]).distinct().count() > 1) {
        return true;
      }
    }
    return false;
  }

  private static void silence(int[][] methods, boolean[] first) {
    for (int[] m : methods) {
      for (int w : m) {
        first[w] = false;
      }
    }
  }

  private static void share(int[] hole, int[] works) {
    for (int w : works) {
      hole[w] = SHARED;
    }
  }

  /** Marks the method's teller unless one of its works is a teller already. */
  private static void tell(int[] hole, int[] method, boolean[] first) {
    int teller = NONE;
    for (int w : method) {
      if (hole[w] >= 0 && first[w]) {
        return;
      }
      teller = hole[w] >= 0 && teller == NONE ? w : teller;
    }
    if (teller >= 0) {
      first[teller] = true;
    }
  }
}
