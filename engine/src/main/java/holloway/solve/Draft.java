package holloway.solve;

import java.util.Arrays;

/**
 * A plan being changed: the path of each run, what is open because of it, and the exact price.
 * Works opened or closed and holes with other cables since the last look are kept in two lists.
 */
final class Draft {
  /** Leaves half of what a price can be to everything else. */
  private static final int MOST_TOLD = 4096;

  final Task task;
  final Network net;
  final Path[] paths;
  final int[][] loads;
  final int[] method;
  final int[] workUse;
  final IntList changedWorks = new IntList();
  final IntList changedHoles = new IntList();
  private final Zones zones;
  private final int[] nodeUse;
  private final int[] edgeUse;
  private final int[] holeUse;
  private final long[] holeExtra;
  private final int[] endUse;
  private final int[] endNode;
  private long price;

  /** Holes that have more cables than any bore takes: counted, so that no number overflows. */
  private int full;

  Draft(Task task, Zones zones) {
    this.task = task;
    this.net = task.net;
    this.zones = zones;
    paths = new Path[task.runs()];
    method = new int[net.methods.length];
    loads = new int[net.methods.length][];
    holeUse = new int[net.methods.length];
    holeExtra = new long[net.methods.length];
    workUse = new int[net.workPrice.length];
    nodeUse = new int[net.nodes];
    edgeUse = new int[net.edges];
    endUse = new int[task.ends.length];
    endNode = new int[task.ends.length];
  }

  /**
   * Exact price of everything open and laid, in units of the profile's scale; {@link Network#SHUT}
   * more for each hole that is too full, as far as a number can tell.
   */
  long price() {
    return Math.addExact(price, Network.SHUT * Math.min(full, MOST_TOLD));
  }

  int routed() {
    int n = 0;
    for (Path p : paths) {
      n += p == null ? 0 : 1;
    }
    return n;
  }

  boolean isOpen(int work) {
    return workUse[work] > 0;
  }

  int holeUse(int hole) {
    return holeUse[hole];
  }

  boolean usesNode(int node) {
    return nodeUse[node] > 0;
  }

  /** The alternatives an end still has: one as soon as a run ends there. */
  int[] alternatives(int end) {
    return endUse[end] > 0 ? new int[] {endNode[end]} : task.ends[end];
  }

  void add(int run, Path path) {
    paths[run] = path;
    Demand d = task.demands[run];
    settle(d.from(), path.start());
    settle(d.to(), path.end(net));
    useNode(path.start(), 1);
    for (int arc : path.arcs()) {
      int e = arc >> 1;
      price = Math.addExact(price, net.travel(e, d.kind()));
      if (edgeUse[e]++ == 0) {
        use(net.edgeWorks[e], 1);
      }
      useNode(net.head[arc], 1);
    }
    for (int arc : path.arcs()) {
      for (int h : net.edgeHoles[arc >> 1]) {
        enter(h, d.kind());
      }
    }
  }

  void remove(int run) {
    Path path = paths[run];
    paths[run] = null;
    Demand d = task.demands[run];
    endUse[d.from()]--;
    endUse[d.to()]--;
    useNode(path.start(), -1);
    for (int arc : path.arcs()) {
      int e = arc >> 1;
      price -= net.travel(e, d.kind());
      if (--edgeUse[e] == 0) {
        use(net.edgeWorks[e], -1);
      }
      useNode(net.head[arc], -1);
      for (int h : net.edgeHoles[e]) {
        leave(h, d.kind());
      }
    }
  }

  private void settle(int end, int node) {
    endUse[end]++;
    endNode[end] = node;
  }

  private void useNode(int node, int step) {
    if (step > 0 ? nodeUse[node]++ == 0 : --nodeUse[node] == 0) {
      use(net.nodeWorks[node], step);
    }
  }

  void use(int[] works, int step) {
    for (int w : works) {
      if (step > 0 ? workUse[w]++ == 0 : --workUse[w] == 0) {
        price = Math.addExact(price, step * net.workPrice[w]);
        changedWorks.add(w);
      }
    }
  }

  private void enter(int hole, int kind) {
    if (loads[hole] == null) {
      loads[hole] = new int[task.capacity.kinds()];
    }
    loads[hole][kind]++;
    if (holeUse[hole]++ == 0) {
      method[hole] = cheapestMethod(hole);
      if (net.methods[hole].length > 0) {
        use(net.methods[hole][method[hole]], 1);
      }
    } else if (task.capacity.dependsOnMethod(hole) && !bores(hole, method[hole]).fits()) {
      setMethod(hole, cheapestMethod(hole));
    }
    reprice(hole);
  }

  private void leave(int hole, int kind) {
    loads[hole][kind]--;
    if (--holeUse[hole] == 0 && net.methods[hole].length > 0) {
      use(net.methods[hole][method[hole]], -1);
    }
    reprice(hole);
  }

  private void reprice(int hole) {
    long now = holeUse[hole] == 0 ? 0 : bores(hole, method[hole]).extra();
    count(holeExtra[hole], -1);
    count(now, 1);
    holeExtra[hole] = now;
    changedHoles.add(hole);
  }

  private void count(long extra, int step) {
    if (extra >= Network.SHUT) {
      full += step;
    } else {
      price = Math.addExact(price, step * extra);
    }
  }

  /** The bores of a hole in use, were it made that way. */
  Capacity.Bores bores(int hole, int way) {
    return task.capacity.bores(hole, way, loads[hole]);
  }

  /** What its bores add to the works of its method. */
  long holeExtra(int hole) {
    return holeExtra[hole];
  }

  /**
   * The method that adds least to what is open, of those that bore wide enough for what passes the
   * hole; the earlier of equals.
   */
  int cheapestMethod(int hole) {
    int best = 0;
    long least = Long.MAX_VALUE;
    for (int m = 0; m < net.methods[hole].length; m++) {
      long p = 0;
      for (int w : net.methods[hole][m]) {
        p += isOpen(w) ? 0 : Math.min(Network.SHUT, zones.price(w));
        p = Math.min(p, Network.SHUT);
      }
      if (task.capacity.dependsOnMethod(hole)) {
        // One that is shut to the search can still be opened, one that is too narrow cannot.
        Capacity.Bores b = bores(hole, m);
        p = b.fits() ? p + b.extra() : 2 * Network.SHUT;
      }
      if (p < least) {
        least = p;
        best = m;
      }
    }
    return best;
  }

  /** Makes an open hole another way. */
  void setMethod(int hole, int m) {
    if (m != method[hole]) {
      use(net.methods[hole][m], 1);
      use(net.methods[hole][method[hole]], -1);
      method[hole] = m;
      reprice(hole);
    }
  }

  /** Holes in use, ascending. */
  int[] openHoles() {
    int n = 0;
    int[] out = new int[holeUse.length];
    for (int h = 0; h < holeUse.length; h++) {
      if (holeUse[h] > 0) {
        out[n++] = h;
      }
    }
    return Arrays.copyOf(out, n);
  }

  /** Takes over the paths and methods of a finished plan. */
  void load(Solution s) {
    clear();
    for (int k = 0; k < paths.length; k++) {
      if (s.paths()[k] != null) {
        add(k, s.paths()[k]);
      }
    }
    restoreMethods(s);
  }

  void restoreMethods(Solution s) {
    for (int h : openHoles()) {
      if (net.methods[h].length > 0) {
        setMethod(h, s.method()[h]);
      }
    }
  }

  void clear() {
    for (int k = 0; k < paths.length; k++) {
      if (paths[k] != null) {
        remove(k);
      }
    }
  }

  Solution save() {
    return new Solution(paths.clone(), method.clone(), routed(), price());
  }
}
