package holloway.certify;

import holloway.routing.RouteGraph;
import java.util.Arrays;
import java.util.function.IntConsumer;

/** Where works are met: at one place of the graph only, or at one hole only. */
final class Meetings {
  private static final int NOWHERE = -1;
  private static final int SEVERAL = -2;

  /** Works met at a single node or on a single edge, its holes included. */
  final boolean[] alone;

  /** The one hole that needs the work and nothing else does, or a negative number. */
  final int[] hole;

  /** By hole: how many edges that are not forbidden pass it. */
  final int[] edgesThrough;

  Meetings(RouteGraph graph, boolean[] shutEdges) {
    int[] place = new int[graph.works().size()];
    hole = new int[place.length];
    edgesThrough = new int[graph.holes().size()];
    Arrays.fill(place, NOWHERE);
    Arrays.fill(hole, NOWHERE);
    for (RouteGraph.Hole h : graph.holes()) {
      each(h, w -> meet(hole, w, h.id()));
    }
    for (RouteGraph.Node v : graph.nodes()) {
      for (int w : v.works()) {
        meet(place, w, v.id());
        hole[w] = SEVERAL;
      }
    }
    for (RouteGraph.Edge e : graph.edges()) {
      for (int w : e.works()) {
        hole[w] = SEVERAL;
      }
      if (!shutEdges[e.id()]) {
        onEdge(graph, e, place);
      }
    }
    alone = new boolean[place.length];
    for (int w = 0; w < place.length; w++) {
      alone[w] = place[w] >= 0;
    }
  }

  private void onEdge(RouteGraph graph, RouteGraph.Edge e, int[] place) {
    int here = graph.nodes().size() + e.id();
    for (int w : e.works()) {
      meet(place, w, here);
    }
    for (int h : e.holes()) {
      edgesThrough[h]++;
      each(graph.holes().get(h), w -> meet(place, w, here));
    }
  }

  private static void each(RouteGraph.Hole h, IntConsumer sink) {
    h.methods().forEach(m -> Arrays.stream(m.works()).forEach(sink));
  }

  private static void meet(int[] where, int work, int at) {
    where[work] = where[work] == NOWHERE || where[work] == at ? at : SEVERAL;
  }
}
