package holloway.routing;

import holloway.geometry.Point3;
import holloway.hollow.WorkKind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The routing graph while it grows: nodes, works and holes by name, edges as they come. */
final class GraphDraft {
  final List<RouteGraph.Node> nodes = new ArrayList<>();
  private final List<Drawn> edges = new ArrayList<>();
  final List<RouteGraph.Hole> holes = new ArrayList<>();
  final List<RouteGraph.Work> works = new ArrayList<>();
  final Map<String, List<Integer>> terminals = new TreeMap<>();
  private final Spending money;
  private final Map<String, Integer> nodeIds = new HashMap<>();
  private final Map<String, Integer> workIds = new HashMap<>();

  /** Takes down what is drawn; null while nobody asks for it. */
  private NetMemory.Tape tape;

  GraphDraft(Spending money) {
    this.money = money;
  }

  /** What is drawn meanwhile, taken down so that it can be drawn again in another draft. */
  NetMemory.Tape taken(Runnable drawing) {
    tape = new NetMemory.Tape();
    drawing.run();
    NetMemory.Tape out = tape;
    tape = null;
    return out;
  }

  /** A node by name; a second call with the same name gives the first node. */
  int node(String name, Point3 at, int... needs) {
    if (tape != null) {
      tape.node(name, at, workNames(needs));
    }
    return nodeIds.computeIfAbsent(
        name,
        k -> {
          nodes.add(new RouteGraph.Node(nodes.size(), name, at, needs));
          return nodes.size() - 1;
        });
  }

  List<String> workNames(int[] ids) {
    return Arrays.stream(ids).mapToObj(w -> works.get(w).name()).toList();
  }

  /** An edge between nodes that are there, out of what was taken down. */
  void edge(String a, String b, Laid laid, long seen, int ways) {
    add(nodeIds.get(a), nodeIds.get(b), laid, seen, new int[0], new int[0], ways);
  }

  /** A work that is there. */
  int work(String name) {
    return workIds.get(name);
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
    Laid laid = Laid.of(pieces);
    long seen = 0;
    for (RouteGraph.Piece p : pieces) {
      seen += visible && p instanceof RouteGraph.Piece.Leg ? Laid.lengthOf(p.path()) : 0;
    }
    add(a, b, laid, seen, holeIds, needs, ways);
  }

  /** An edge out of sight, of pieces that were measured before. */
  void edge(int a, int b, Laid laid, int[] holeIds, int[] needs, int ways) {
    if (a != b) {
      add(a, b, laid, 0, holeIds, needs, ways);
    }
  }

  private void add(int a, int b, Laid laid, long seen, int[] holeIds, int[] needs, int ways) {
    if (tape != null && holeIds.length + needs.length == 0) {
      tape.edge(nodes.get(a).name(), nodes.get(b).name(), laid, seen, ways);
    } else if (tape != null) {
      throw new IllegalStateException("a net laid by hand needs neither holes nor works");
    }
    edges.add(new Drawn(a, b, laid, seen, holeIds, needs, ways));
  }

  RouteGraph finish() {
    return new RouteGraph(
        nodes, Dominated.without(edges, holes), holes, works, terminals, money.fares());
  }
}
