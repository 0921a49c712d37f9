package holloway.certify;

import holloway.routing.RouteGraph;
import java.util.Arrays;
import java.util.List;

/** What is open to the plans of one part: not forbidden, and none of its works shut. */
final class Terrain {
  final boolean[] nodes;
  final boolean[] edges;

  /** By hole its methods that are open; null where the hole cannot be made at all. */
  final int[][][] methods;

  Terrain(RouteGraph graph, Forbidden forbidden, List<Integer> shut) {
    boolean[] closed = forbidden.works.clone();
    shut.forEach(w -> closed[w] = true);
    nodes = new boolean[graph.nodes().size()];
    edges = new boolean[graph.edges().size()];
    methods = new int[graph.holes().size()][][];
    for (RouteGraph.Node v : graph.nodes()) {
      nodes[v.id()] = none(v.works(), closed);
    }
    for (RouteGraph.Hole h : graph.holes()) {
      int[][] open =
          h.methods().stream()
              .map(RouteGraph.Method::works)
              .filter(m -> none(m, closed))
              .toArray(int[][]::new);
      methods[h.id()] = open.length == 0 && !h.methods().isEmpty() ? null : open;
    }
    for (RouteGraph.Edge e : graph.edges()) {
      edges[e.id()] =
          !forbidden.edges[e.id()]
              && none(e.works(), closed)
              && Arrays.stream(e.holes()).allMatch(h -> methods[h] != null);
    }
  }

  private static boolean none(int[] works, boolean[] closed) {
    return Arrays.stream(works).noneMatch(w -> closed[w]);
  }
}
