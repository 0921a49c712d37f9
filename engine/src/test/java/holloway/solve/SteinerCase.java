package holloway.solve;

import holloway.catalog.Cable;
import holloway.hollow.WorkKind;
import holloway.request.Profile;
import holloway.routing.RouteGraph;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * A Steiner tree as an order: travel costs nothing, every edge is one work, the first terminal is
 * the cabinet. Text form: {@code terminals: t t t …} and one line {@code u v cost} an edge.
 */
record SteinerCase(RouteGraph graph, Order order) {
  /** Units of the plan for one unit of the case. */
  static final long SCALE = 1_000_000;

  static SteinerCase parse(List<String> lines) {
    GraphBuilder b = new GraphBuilder();
    TreeMap<Integer, Integer> node = new TreeMap<>();
    List<Integer> terminals = new ArrayList<>();
    for (String line : lines) {
      String[] f = line.trim().split("\\s+");
      if (f[0].equals("terminals:")) {
        for (int i = 1; i < f.length; i++) {
          terminals.add(Integer.parseInt(f[i]));
        }
      } else if (f.length == 3) {
        int u = place(b, node, Integer.parseInt(f[0]));
        int v = place(b, node, Integer.parseInt(f[1]));
        int work = b.work(WorkKind.BORE, Long.parseLong(f[2]) * SCALE, 1, "");
        b.edge(u, v, 0, new int[0], new int[] {work}, 0);
      }
    }
    List<Order.Wanted> runs = new ArrayList<>();
    b.end("cabinet", node.get(terminals.get(0)));
    for (int t : terminals.subList(1, terminals.size())) {
      b.end("t" + t, node.get(t));
      runs.add(new Order.Wanted("run " + t, "cabinet", "t" + t, Cable.get("cat6")));
    }
    return new SteinerCase(b.build(), new Order(runs, Profile.LEAST_WORK, Set.of(), Map.of()));
  }

  private static int place(GraphBuilder b, TreeMap<Integer, Integer> node, int v) {
    return node.computeIfAbsent(v, k -> b.node(10L * k, 0, 0));
  }
}
