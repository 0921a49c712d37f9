package holloway.solve;

import holloway.geometry.Point3;
import holloway.hollow.HollowKind;
import holloway.hollow.WorkKind;
import holloway.routing.RouteGraph;
import holloway.routing.RouteGraph.Edge;
import holloway.routing.RouteGraph.Hole;
import holloway.routing.RouteGraph.Method;
import holloway.routing.RouteGraph.Node;
import holloway.routing.RouteGraph.Piece;
import holloway.routing.RouteGraph.Step;
import holloway.routing.RouteGraph.Work;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalLong;
import java.util.TreeMap;

/** Builds routing graphs by hand for tests. Nodes lie where they are put, edges run straight. */
final class GraphBuilder {
  static final long MM = 1_000_000;

  final List<Node> nodes = new ArrayList<>();
  final List<Edge> edges = new ArrayList<>();
  final List<Hole> holes = new ArrayList<>();
  final List<Work> works = new ArrayList<>();
  final TreeMap<String, List<Integer>> terminals = new TreeMap<>();

  int work(WorkKind kind, long price, int counted, String zone) {
    int id = works.size();
    int patches = kind == WorkKind.PATCH ? 1 : 0;
    works.add(new Work(id, "work " + id, kind, price, counted, patches, zone));
    return id;
  }

  int bore(long price) {
    return work(WorkKind.BORE, price, 1, "");
  }

  int node(long xMm, long yMm, long zMm, int... nodeWorks) {
    int id = nodes.size();
    nodes.add(new Node(id, "place " + id, new Point3(xMm * MM, yMm * MM, zMm * MM), nodeWorks));
    return id;
  }

  int hole(List<int[]> methods, List<Step> steps, OptionalLong second) {
    int id = holes.size();
    List<Method> list = new ArrayList<>();
    for (int[] m : methods) {
      list.add(new Method("way " + list.size(), "stand " + list.size(), m));
    }
    Point3 a = new Point3(id * 40 * MM, 0, 0);
    Point3 b = new Point3(id * 40 * MM, 0, 76 * MM);
    holes.add(
        new Hole(
            id,
            "site " + id,
            "top plate",
            a,
            b,
            "below " + id,
            "above " + id,
            list,
            steps,
            second,
            methods.isEmpty(),
            false,
            0,
            List.of("plate")));
    return id;
  }

  /** The hole's first method bores with flexible bits alone. */
  void firstIsFlexible(int hole) {
    Hole h = holes.get(hole);
    List<Method> list = new ArrayList<>(h.methods());
    Method m = list.get(0);
    list.set(0, new Method(m.words(), m.stand(), m.works(), true));
    holes.set(hole, withMethods(h, list, h.steps(), h.second()));
  }

  /** Another hole in the same place. */
  static Hole withMethods(Hole h, List<Method> methods, List<Step> steps, OptionalLong second) {
    return new Hole(
        h.id(),
        h.site(),
        h.kind(),
        h.a(),
        h.b(),
        h.hollowA(),
        h.hollowB(),
        methods,
        steps,
        second,
        methods.isEmpty(),
        h.assumed(),
        h.ways(),
        h.pierced());
  }

  int edge(int a, int b, long price, int[] edgeHoles, int[] edgeWorks, int ways) {
    int id = edges.size();
    List<Piece> pieces = new ArrayList<>();
    Point3 from = nodes.get(a).at();
    Point3 to = nodes.get(b).at();
    int parts = 2 * edgeHoles.length + 1;
    boolean blind = edgeHoles.length > 0;
    for (int i = 0; i < parts; i++) {
      List<Point3> path = List.of(between(from, to, i, parts), between(from, to, i + 1, parts));
      String hollow = blind ? "bay " + id + "." + i : "room";
      HollowKind kind = blind ? HollowKind.STUD_BAY : HollowKind.ROOM_SURFACE;
      pieces.add(
          i % 2 == 0
              ? new Piece.Leg(hollow, kind, path, blind, i == 0 ? price : 0)
              : new Piece.Pass("site " + edgeHoles[i / 2], path));
    }
    long length = from.distanceTo(to);
    edges.add(new Edge(id, a, b, price, length, 0, edgeHoles, edgeWorks, ways, pieces));
    return id;
  }

  int edge(int a, int b, long price, int... edgeHoles) {
    return edge(a, b, price, edgeHoles, new int[0], 0);
  }

  private static Point3 between(Point3 a, Point3 b, int i, int of) {
    return new Point3(
        a.x() + (b.x() - a.x()) * i / of,
        a.y() + (b.y() - a.y()) * i / of,
        a.z() + (b.z() - a.z()) * i / of);
  }

  GraphBuilder end(String name, Integer... alternatives) {
    terminals.put(name, Arrays.asList(alternatives));
    return this;
  }

  RouteGraph build() {
    return new RouteGraph(nodes, edges, holes, works, terminals);
  }
}
