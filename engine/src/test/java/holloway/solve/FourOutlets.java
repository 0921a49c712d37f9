package holloway.solve;

import holloway.catalog.Cable;
import holloway.request.Profile;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Four cables of 6 mm to four outlets behind one place, each with a way of its own besides. */
final class FourOutlets {
  private static final int OUTLETS = 4;

  private FourOutlets() {}

  /** The outlets, for nothing from {@code behind} and for {@code own} units from the cabinet. */
  static void add(GraphBuilder b, int cabinet, int behind, long own) {
    b.end("cabinet", cabinet);
    for (int i = 0; i < OUTLETS; i++) {
      int outlet = b.node(1000 * i, 1000, 1000);
      b.edge(behind, outlet, 0);
      b.edge(cabinet, outlet, own);
      b.end("outlet " + i, outlet);
    }
  }

  static Order order() {
    List<Order.Wanted> runs = new ArrayList<>();
    for (int i = 0; i < OUTLETS; i++) {
      runs.add(new Order.Wanted("run " + i, "cabinet", "outlet " + i, Cable.get("cat6")));
    }
    return new Order(runs, Profile.LEAST_WORK, Set.of(), Map.of());
  }
}
