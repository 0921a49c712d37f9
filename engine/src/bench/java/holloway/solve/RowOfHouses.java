package holloway.solve;

import holloway.request.Profile;
import holloway.routing.RouteGraph;
import holloway.support.LargeHouse;
import holloway.support.StagedPlan;
import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * A graph larger than any house that may be ordered: the graph of a 600 m2 house so many times over,
 * with the cabinet of the first at the end of them all. Its 60 runs go to the houses in turn. Prints
 * about what {@link HouseTable} does.
 */
final class RowOfHouses {
  private static final long FROM_HOUSE_TO_HOUSE = 100_000;

  private final RouteGraph one;
  private final List<RouteGraph.Node> nodes = new ArrayList<>();
  private final List<RouteGraph.Edge> edges = new ArrayList<>();
  private final List<RouteGraph.Hole> holes = new ArrayList<>();
  private final List<RouteGraph.Work> works = new ArrayList<>();
  private final Map<String, List<Integer>> ends = new TreeMap<>();

  private RowOfHouses(RouteGraph one) {
    this.one = one;
  }

  /** Arguments: how many houses, then an effort. */
  public static void main(String[] args) throws IOException {
    var file = Files.createTempFile("large", ".yaml");
    file.toFile().deleteOnExit();
    Files.writeString(file, LargeHouse.text(LargeHouse.Size.LARGE, 1));
    StagedPlan staged = new StagedPlan(file);
    RowOfHouses row = new RowOfHouses(staged.routed.graph());
    RouteGraph graph = row.times(Integer.parseInt(args[0]), staged.order());
    Order order = row.order(staged.order(), Integer.parseInt(args[0]));
    Budget budget = args[1].equals("quick") ? Budget.QUICK : Budget.USUAL;
    long wall = System.nanoTime();
    Solved s = JointPlanner.solve(graph, order, budget, Progress.SILENT);
    wall = System.nanoTime() - wall;
    System.out.printf(
        Locale.ROOT,
        "| %d houses | %d | %d of %d | %.2f %% | %.1f s |%n",
        Integer.parseInt(args[0]),
        graph.nodes().size(),
        order.runs().size() - s.plan().unrouted().size(),
        order.runs().size(),
        100 * s.plan().totals().gap(),
        wall / 1e9);
  }

  private RouteGraph times(int many, Order order) {
    String cabinet = order.runs().get(0).from();
    for (int i = 0; i < many; i++) {
      add(i);
      if (i > 0) {
        int here = ends.get(cabinet + " " + i).get(0);
        int before = ends.get(cabinet + " " + (i - 1)).get(0);
        edges.add(
            new RouteGraph.Edge(
                edges.size(),
                before,
                here,
                FROM_HOUSE_TO_HOUSE,
                FROM_HOUSE_TO_HOUSE,
                0,
                new int[0],
                new int[0],
                0,
                List.of()));
      }
    }
    return new RouteGraph(nodes, edges, holes, works, ends, one.fares());
  }

  private void add(int copy) {
    int node = nodes.size();
    int hole = holes.size();
    int work = works.size();
    String mark = " " + copy;
    for (RouteGraph.Work w : one.works()) {
      works.add(
          new RouteGraph.Work(
              work + w.id(), w.name() + mark, w.kind(), w.price(), w.holes(), w.patches(), w.zone()));
    }
    for (RouteGraph.Node n : one.nodes()) {
      nodes.add(new RouteGraph.Node(node + n.id(), n.name() + mark, n.at(), more(n.works(), work)));
    }
    for (RouteGraph.Hole h : one.holes()) {
      holes.add(hole(h, hole, work, mark));
    }
    for (RouteGraph.Edge e : one.edges()) {
      edges.add(
          new RouteGraph.Edge(
              edges.size(),
              node + e.a(),
              node + e.b(),
              e.price(),
              e.length(),
              e.visible(),
              more(e.holes(), hole),
              more(e.works(), work),
              e.ways(),
              e.pieces()));
    }
    one.terminals()
        .forEach((end, at) -> ends.put(end + mark, at.stream().map(v -> node + v).toList()));
  }

  private static RouteGraph.Hole hole(RouteGraph.Hole h, int hole, int work, String mark) {
    List<RouteGraph.Method> methods =
        h.methods().stream()
            .map(
                m ->
                    new RouteGraph.Method(
                        m.words(), m.stand(), more(m.works(), work), m.flexible()))
            .toList();
    return new RouteGraph.Hole(
        hole + h.id(),
        h.site() + mark,
        h.kind(),
        h.a(),
        h.b(),
        h.hollowA(),
        h.hollowB(),
        methods,
        h.steps(),
        h.second(),
        h.made(),
        h.assumed(),
        h.ways(),
        h.pierced());
  }

  private static int[] more(int[] ids, int by) {
    return Arrays.stream(ids).map(i -> i + by).toArray();
  }

  private Order order(Order of, int many) {
    List<Order.Wanted> runs = new ArrayList<>();
    for (Order.Wanted w : of.runs()) {
      int house = runs.size() % many;
      runs.add(new Order.Wanted(w.id(), w.from() + " 0", w.to() + " " + house, w.cable()));
    }
    return new Order(runs, Profile.LEAST_WORK, Set.of(), Map.of());
  }
}
