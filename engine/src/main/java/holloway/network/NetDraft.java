package holloway.network;

import holloway.catalog.Cable;
import holloway.geometry.Point3;
import holloway.hollow.WorkKind;
import holloway.request.Profile;
import holloway.routing.RouteGraph;
import holloway.solve.Order;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeMap;

/** A network while it is read. Costs are scaled, so that they can be shared out finely. */
final class NetDraft {
  /** Units for one unit of cost. */
  static final long SCALE = 1_000_000;

  private static final int[] NONE = {};
  private final List<RouteGraph.Node> nodes = new ArrayList<>();
  private final List<RouteGraph.Edge> edges = new ArrayList<>();
  private final List<RouteGraph.Hole> holes = new ArrayList<>();
  private final List<RouteGraph.Work> works = new ArrayList<>();
  private final TreeMap<Integer, Integer> known = new TreeMap<>();
  private final TreeMap<String, List<Integer>> ends = new TreeMap<>();
  private final List<Order.Wanted> runs = new ArrayList<>();

  int node(int name) {
    return known.computeIfAbsent(
        name,
        n -> {
          nodes.add(new RouteGraph.Node(nodes.size(), "node " + n, point(n), NONE));
          return nodes.size() - 1;
        });
  }

  private static Point3 point(int n) {
    return new Point3(n * 1_000_000L, 0, 0);
  }

  boolean hasNode(int name) {
    return known.containsKey(name);
  }

  private int work(long cost) {
    String name = "work " + works.size();
    works.add(new RouteGraph.Work(works.size(), name, WorkKind.BORE, cost * SCALE, 1, 0, ""));
    return works.size() - 1;
  }

  /** An edge for as many as come, paid once. */
  void edge(int a, int b, long cost) {
    edges.add(edge(node(a), node(b), 0, NONE, new int[] {work(cost)}, false));
  }

  /** An arc that is paid once and again for each unit of flow. */
  void arc(int a, int b, long each, long fixed, List<RouteGraph.Step> capacity) {
    int id = holes.size();
    Point3 at = point(id);
    RouteGraph.Method method = new RouteGraph.Method("", "", new int[] {work(fixed)});
    holes.add(
        new RouteGraph.Hole(
            id,
            "arc " + id,
            "",
            at,
            at,
            "",
            "",
            List.of(method),
            capacity,
            OptionalLong.empty(),
            false,
            false,
            0,
            List.of()));
    edges.add(edge(node(a), node(b), each * SCALE, new int[] {id}, NONE, true));
  }

  private RouteGraph.Edge edge(
      int a, int b, long price, int[] passed, int[] opened, boolean oneWay) {
    return new RouteGraph.Edge(
        edges.size(), a, b, price, 0, 0, passed, opened, 0, List.of(), oneWay);
  }

  void run(String id, int from, int to, Cable cable) {
    ends.putIfAbsent("node " + from, List.of(node(from)));
    ends.putIfAbsent("node " + to, List.of(node(to)));
    runs.add(new Order.Wanted(id, "node " + from, "node " + to, cable));
  }

  Instance finish() {
    return new Instance(
        new RouteGraph(nodes, edges, holes, works, ends),
        new Order(runs, Profile.LEAST_WORK, Set.of(), Map.of()),
        SCALE);
  }
}
