package holloway.solve;

import holloway.routing.RouteGraph;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** The hollows of an edge in words that do not tell the bays of one wall apart. */
final class HollowNames {
  private static final String BAY = "/bay-";

  private HollowNames() {}

  /** Kind and owner of each leg, in walking order. */
  static List<String> of(RouteGraph.Edge edge, boolean back) {
    List<String> out = new ArrayList<>();
    for (RouteGraph.Piece p : edge.pieces()) {
      if (p instanceof RouteGraph.Piece.Leg leg) {
        int bay = leg.hollow().indexOf(BAY);
        String owner = bay < 0 ? leg.hollow() : leg.hollow().substring(0, bay);
        out.add(leg.kind().word() + " " + owner);
      }
    }
    if (back) {
      Collections.reverse(out);
    }
    return out;
  }
}
