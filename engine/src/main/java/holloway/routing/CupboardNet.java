package holloway.routing;

import holloway.geometry.Point3;
import holloway.hollow.Hollow;
import holloway.hollow.Solids;
import java.util.List;

/** Laying by hand inside a cupboard: from each hole that leads into it straight to each other. */
final class CupboardNet {
  private final GraphDraft draft;
  private final Prices prices;
  private final Solids solids;

  CupboardNet(GraphDraft draft, Prices prices, Solids solids) {
    this.draft = draft;
    this.prices = prices;
    this.solids = solids;
  }

  void connect(Hollow h, List<Entry> entries) {
    for (int i = 0; i < entries.size(); i++) {
      for (int j = i + 1; j < entries.size(); j++) {
        List<Point3> path = Paths.inside(h, entries.get(i).at(), entries.get(j).at());
        if (Paths.clear(solids, path)) {
          leg(h, entries.get(i).node(), entries.get(j).node(), path);
        }
      }
    }
  }

  private void leg(Hollow h, int a, int b, List<Point3> path) {
    long price = prices.lay("plain", Laid.lengthOf(path), false);
    RouteGraph.Piece leg = new RouteGraph.Piece.Leg(h.id(), h.kind(), path, false, price);
    draft.edge(a, b, List.of(leg), new int[0], new int[0], 0, false);
  }
}
