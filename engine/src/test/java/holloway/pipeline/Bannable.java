package holloway.pipeline;

import holloway.hollow.Way;
import holloway.routing.RouteGraph;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Words that would ban a route: its holes, its hollows, the ways it goes. */
final class Bannable {
  private Bannable() {}

  static List<String> of(RouteGraph g, List<RouteGraph.Edge> edges) {
    Set<String> out = new TreeSet<>();
    for (RouteGraph.Edge e : edges) {
      for (int h : e.holes()) {
        out.add(g.holes().get(h).site());
      }
      for (RouteGraph.Piece p : e.pieces()) {
        if (p instanceof RouteGraph.Piece.Leg leg) {
          out.add(leg.hollow());
        }
      }
      for (Way w : Way.values()) {
        if ((e.ways() & w.bit()) != 0) {
          out.add(w.word());
        }
      }
    }
    return List.copyOf(out);
  }
}
