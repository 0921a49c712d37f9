package holloway.solve;

import java.util.Arrays;

/**
 * The shortest path of one group when it pays its travel and its shares, with some zones shut: the
 * least any plan of those zones can charge to the group.
 */
final class GroupPaths {
  private final Task task;
  private final Network net;
  private final Places places;
  private final ShortestPaths search;
  private final boolean[][] methodOpen;
  private final boolean[] edgeOpen;
  private final boolean[] nodeOpen;
  private final boolean[][] fits;
  private final long[] holePrice;
  private final long[] start;

  /**
   * @param shutWorks zones not to be had, besides what the order bans
   * @param fits by group kind and hole: whether one such cable passes
   */
  GroupPaths(Task task, Places places, boolean[] shutWorks, boolean[][] fits) {
    this.task = task;
    this.net = task.net;
    this.places = places;
    this.fits = fits;
    search = new ShortestPaths(net);
    holePrice = new long[net.methods.length];
    start = new long[net.nodes];
    methodOpen = new boolean[net.methods.length][];
    for (int h = 0; h < methodOpen.length; h++) {
      methodOpen[h] = new boolean[net.methods[h].length];
      for (int m = 0; m < methodOpen[h].length; m++) {
        methodOpen[h][m] = open(net.methods[h][m], shutWorks);
      }
    }
    nodeOpen = new boolean[net.nodes];
    for (int v = 0; v < net.nodes; v++) {
      nodeOpen[v] = open(net.nodeWorks[v], shutWorks);
    }
    edgeOpen = new boolean[net.edges];
    for (int e = 0; e < net.edges; e++) {
      edgeOpen[e] = !net.edgeShut[e] && open(net.edgeWorks[e], shutWorks);
    }
  }

  private boolean open(int[] works, boolean[] shutWorks) {
    for (int w : works) {
      if (shutWorks[w] || net.workShut[w]) {
        return false;
      }
    }
    return true;
  }

  long looks() {
    return search.looks();
  }

  /** The path with its exact price, or null if the group has none. */
  Path find(Groups.Group g, long[] units) {
    for (int h = 0; h < holePrice.length; h++) {
      holePrice[h] = fits[g.kind()][h] ? cheapest(h, places.holePlaces[h], units) : Network.SHUT;
    }
    for (int s : task.ends[g.from()]) {
      start[s] = nodeOpen[s] ? sum(places.startPlaces[s], units) : Network.SHUT;
    }
    return search.find(
        task.ends[g.from()], start, task.ends[g.to()], arc -> price(arc, g, units), g.pin());
  }

  private long price(int arc, Groups.Group g, long[] units) {
    int e = arc >> 1;
    if (!edgeOpen[e] || !nodeOpen[net.head[arc]]) {
      return Network.SHUT;
    }
    long sum = g.runs().length * net.price[e] + sum(places.arcPlaces[arc], units);
    int[] holes = net.edgeHoles[e];
    int[][][] own = places.ownHolePlaces[arc];
    for (int i = 0; i < holes.length; i++) {
      int h = holes[i];
      long p = holePrice[h];
      if (own != null && p < Network.SHUT) {
        p = cheapest(h, own[i], units);
      }
      sum = Math.min(Network.SHUT, sum + p);
    }
    return sum;
  }

  private long cheapest(int hole, int[][] methods, long[] units) {
    int m = best(hole, methods, units);
    return m >= 0 ? sum(methods[m], units) : methods.length == 0 ? 0 : Network.SHUT;
  }

  private int best(int hole, int[][] methods, long[] units) {
    int best = -1;
    long least = Network.SHUT;
    for (int m = 0; m < methods.length; m++) {
      if (methodOpen[hole][m]) {
        long s = sum(methods[m], units);
        if (s < least) {
          least = s;
          best = m;
        }
      }
    }
    return best;
  }

  /** Places the path pays at, each once, ascending. */
  int[] paid(Path p, long[] units) {
    IntList out = new IntList();
    addAll(out, places.startPlaces[p.start()]);
    for (int arc : p.arcs()) {
      addAll(out, places.arcPlaces[arc]);
      int[] holes = net.edgeHoles[arc >> 1];
      for (int i = 0; i < holes.length; i++) {
        int[][] methods =
            places.ownHolePlaces[arc] == null
                ? places.holePlaces[holes[i]]
                : places.ownHolePlaces[arc][i];
        int m = best(holes[i], methods, units);
        if (m >= 0) {
          addAll(out, methods[m]);
        }
      }
    }
    return Arrays.stream(out.toArray()).sorted().distinct().toArray();
  }

  private static void addAll(IntList out, int[] values) {
    for (int v : values) {
      out.add(v);
    }
  }

  private static long sum(int[] places, long[] units) {
    long s = 0;
    for (int p : places) {
      s += units[p];
    }
    return s;
  }
}
