package holloway.solve;

import java.util.ArrayList;
import java.util.List;

/**
 * What one group pays at given units for an arc, a hole or a start, and which ways it may walk at
 * all with some zones shut.
 */
final class GroupLengths {
  private final Network net;
  private final List<Groups.Group> groups;
  private final Places places;
  private final Passable passable;
  private final boolean[][] fits;

  /**
   * @param shutWorks zones not to be had, besides what the order bans
   * @param fits by group kind and hole: whether one such cable passes
   */
  GroupLengths(
      Network net,
      List<Groups.Group> groups,
      Places places,
      boolean[] shutWorks,
      boolean[][] fits) {
    this.net = net;
    this.groups = groups;
    this.places = places;
    this.fits = fits;
    passable = new Passable(net, shutWorks);
  }

  /** No group may walk the arc. */
  boolean isShut(int arc) {
    return !passable.edges[arc >> 1] || !passable.nodes[net.head[arc]];
  }

  /** One cable of the group fits the hole, and the hole may be made. */
  boolean passes(int group, int hole) {
    return fits(group, hole) && passable.holes[hole];
  }

  /** One cable of the group fits the hole, if it is made. */
  boolean fits(int group, int hole) {
    return fits[groups.get(group).kind()][hole];
  }

  /** True if the group may walk the path here. */
  boolean open(Path p, int group) {
    boolean out = passable.nodes[p.start()];
    for (int arc : p.arcs()) {
      out &= !isShut(arc);
      for (int h : net.edgeHoles[arc >> 1]) {
        out &= passes(group, h);
      }
    }
    return out;
  }

  int[] startPlaces(int node) {
    return places.startPlaces[node];
  }

  int[] arcPlaces(int arc) {
    return places.arcPlaces[arc];
  }

  /** For each hole on the arc that has to be made: by method not shut, the places charged. */
  List<int[][]> openMethods(int arc) {
    List<int[][]> out = new ArrayList<>();
    int[] holes = net.edgeHoles[arc >> 1];
    for (int i = 0; i < holes.length; i++) {
      int[][] methods = places.methodsOf(arc, i);
      List<int[]> open = new ArrayList<>();
      for (int m = 0; m < methods.length; m++) {
        if (passable.methods[holes[i]][m]) {
          open.add(methods[m]);
        }
      }
      if (!open.isEmpty()) {
        out.add(open.toArray(int[][]::new));
      }
    }
    return out;
  }

  /** What walking an arc costs the group at these units, reckoned anew. */
  long lengthOf(int arc, int group, long[] units) {
    int e = arc >> 1;
    if (isShut(arc)) {
      return Network.SHUT;
    }
    long sum = travelOf(arc, group) + sum(places.arcPlaces[arc], units);
    int[] holes = net.edgeHoles[e];
    for (int i = 0; i < holes.length && sum < Network.SHUT; i++) {
      sum +=
          passes(group, holes[i])
              ? holeOf(holes[i], places.methodsOf(arc, i), units)
              : Network.SHUT;
    }
    return Math.min(Network.SHUT, sum);
  }

  /** Travel of all runs of the group. */
  long travelOf(int arc, int group) {
    Groups.Group g = groups.get(group);
    long one = net.travel(arc >> 1, g.kind());
    return one >= Network.SHUT ? one : one * g.runs().length;
  }

  /** What starting at a node costs. */
  long startOf(int node, long[] units) {
    return passable.nodes[node] ? sum(places.startPlaces[node], units) : Network.SHUT;
  }

  /** What a hole costs at these units by its cheapest method that is not shut. */
  long holeOf(int hole, int[][] methods, long[] units) {
    long least = methods.length == 0 ? 0 : Network.SHUT;
    for (int m = 0; m < methods.length; m++) {
      if (passable.methods[hole][m]) {
        least = Math.min(least, sum(methods[m], units));
      }
    }
    return least;
  }

  static long sum(int[] places, long[] units) {
    long s = 0;
    for (int p : places) {
      s += units[p];
    }
    return s;
  }
}
