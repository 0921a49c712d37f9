package holloway.routing;

import holloway.geometry.Point3;
import holloway.hollow.WorkKind;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The routing graph while it grows: nodes, works and holes by name, edges as they come. */
final class GraphDraft {
  final List<RouteGraph.Node> nodes = new ArrayList<>();
  final List<RouteGraph.Edge> edges = new ArrayList<>();
  final List<RouteGraph.Hole> holes = new ArrayList<>();
  final List<RouteGraph.Work> works = new ArrayList<>();
  final Map<String, List<Integer>> terminals = new TreeMap<>();
  private final Spending money;
  private final Map<String, Integer> nodeIds = new HashMap<>();
  private final Map<String, Integer> workIds = new HashMap<>();

  GraphDraft(Spending money) {
    this.money = money;
  }

  /** A node by name; a second call with the same name gives the first node. */
  int node(String name, Point3 at, int... needs) {
    return nodeIds.computeIfAbsent(
        name,
        k -> {
          nodes.add(new RouteGraph.Node(nodes.size(), name, at, needs));
          return nodes.size() - 1;
        });
  }

  int work(String name, WorkKind kind, long price, int holeCount, int patches, String zone) {
    return workIds.computeIfAbsent(
        name,
        k -> {
          works.add(new RouteGraph.Work(works.size(), name, kind, price, holeCount, patches, zone));
          return works.size() - 1;
        });
  }

  /**
   * An edge whose length and price come from its pieces; one that leads nowhere is dropped. The
   * money for cable is a fare, which each kind pays by the metre.
   */
  void edge(
      int a,
      int b,
      List<RouteGraph.Piece> pieces,
      int[] holeIds,
      int[] needs,
      int ways,
      boolean visible) {
    if (a == b) {
      return;
    }
    long price = 0;
    long length = 0;
    long seen = 0;
    for (RouteGraph.Piece p : pieces) {
      long m = lengthOf(p.path());
      length += m;
      if (p instanceof RouteGraph.Piece.Leg leg) {
        price += leg.price();
        seen += visible ? m : 0;
      }
    }
    edges.add(
        new RouteGraph.Edge(
            edges.size(), a, b, price, length, seen, holeIds, needs, ways, List.copyOf(pieces)));
  }

  static long lengthOf(List<Point3> path) {
    long sum = 0;
    for (int i = 0; i + 1 < path.size(); i++) {
      sum += path.get(i).distanceTo(path.get(i + 1));
    }
    return sum;
  }

  RouteGraph finish() {
    return new RouteGraph(
        nodes, Dominated.without(edges, holes), holes, works, terminals, money.fares());
  }
}
