package holloway.routing;

import holloway.geometry.Point3;
import holloway.hollow.Hollow;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Laying by hand along a narrow space: behind a stretch of skirting, or over the panel of a box
 * under a ceiling. Cable keeps to the middle of the space, and each place is joined to the next one
 * along it.
 */
final class LineNet {
  private final GraphDraft draft;
  private final Prices prices;
  private final Hollow hollow;
  private final String key;

  /**
   * @param key last part of a {@code lay.metre.*} key
   */
  LineNet(GraphDraft draft, Prices prices, Hollow hollow, String key) {
    this.draft = draft;
    this.prices = prices;
    this.hollow = hollow;
    this.key = key;
  }

  /**
   * @param works what every place of the line needs opened
   */
  void connect(List<Entry> entries, int[] works) {
    List<Entry> sorted = new ArrayList<>(entries);
    sorted.sort(
        Comparator.comparingLong((Entry e) -> hollow.frame().toLocal(e.at()).x())
            .thenComparingInt(Entry::node));
    int before = -1;
    Point3 last = null;
    for (Entry e : sorted) {
      List<Point3> spur = new ArrayList<>();
      for (Point3 p : Paths.toMiddle(hollow.clear(), hollow.frame().toLocal(e.at()))) {
        spur.add(hollow.frame().toWorld(p));
      }
      Point3 lane = spur.get(spur.size() - 1);
      long x = hollow.frame().toLocal(lane).x();
      int node = draft.node(hollow.id() + "/lane-" + x / 1_000_000, lane, works);
      leg(node, e.node(), Paths.tidy(Paths.reversed(spur)));
      if (last != null) {
        leg(before, node, List.of(last, lane));
      }
      before = node;
      last = lane;
    }
  }

  private void leg(int a, int b, List<Point3> path) {
    long price = prices.lay(key, Laid.lengthOf(path), false);
    RouteGraph.Piece leg = new RouteGraph.Piece.Leg(hollow.id(), hollow.kind(), path, false, price);
    draft.edge(a, b, List.of(leg), new int[0], new int[0], 0, false);
  }
}
