package holloway.solve;

import java.util.Arrays;

/** Whether a path may be walked as an order's bans and pins leave a network. */
final class OpenPaths {
  private OpenPaths() {}

  /** Nothing on it is shut, and it goes where the demand is pinned to. */
  static boolean isOpen(Network net, Path p, Demand d) {
    boolean open = free(net, net.nodeWorks[p.start()]);
    boolean pinned = d.pin() == null;
    for (int arc : p.arcs()) {
      int e = arc >> 1;
      pinned |= d.pin() != null && d.pin()[e];
      open &= !net.edgeShut[e] && free(net, net.edgeWorks[e]);
      open &= free(net, net.nodeWorks[net.head[arc]]);
      for (int h : net.edgeHoles[e]) {
        int[][] methods = net.methods[h];
        open &= methods.length == 0 || Arrays.stream(methods).anyMatch(m -> free(net, m));
      }
    }
    return open && pinned;
  }

  private static boolean free(Network net, int[] works) {
    return Arrays.stream(works).noneMatch(w -> net.workShut[w]);
  }
}
