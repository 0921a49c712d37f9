package holloway.solve;

import holloway.routing.RouteGraph;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/**
 * What has become of the nodes, edges, holes and works of one graph in another. They are known by
 * what they are (name, place, site, what they join), never by number or price; what cannot be found
 * again counts as gone.
 */
final class Carry {
  private static final int GONE = -1;

  /** Old number to new, −1 where it is gone. */
  final int[] nodes;

  final int[] holes;
  final int[] works;
  final int[] edges;
  final boolean sameGraph;

  Carry(RouteGraph from, RouteGraph to) {
    sameGraph = from == to;
    if (sameGraph) {
      nodes = IntStream.range(0, from.nodes().size()).toArray();
      holes = IntStream.range(0, from.holes().size()).toArray();
      works = IntStream.range(0, from.works().size()).toArray();
      edges = IntStream.range(0, from.edges().size()).toArray();
      return;
    }
    nodes = match(from.nodes().size(), to.nodes().size(), node(from), node(to));
    holes = match(from.holes().size(), to.holes().size(), hole(from), hole(to));
    works = match(from.works().size(), to.works().size(), work(from), work(to));
    edges = match(from.edges().size(), to.edges().size(), e -> oldEdge(from, e), edge(to));
  }

  private static IntFunction<Object> node(RouteGraph g) {
    return i -> List.of(g.nodes().get(i).name(), g.nodes().get(i).at());
  }

  private static IntFunction<Object> hole(RouteGraph g) {
    return i -> List.of(g.holes().get(i).site(), g.holes().get(i).a(), g.holes().get(i).b());
  }

  private static IntFunction<Object> work(RouteGraph g) {
    return i -> {
      RouteGraph.Work w = g.works().get(i);
      return List.of(w.name(), w.kind(), w.zone());
    };
  }

  private static IntFunction<Object> edge(RouteGraph g) {
    return i -> {
      RouteGraph.Edge e = g.edges().get(i);
      List<Integer> passed = Arrays.stream(e.holes()).boxed().toList();
      return List.of(e.a(), e.b(), e.length(), e.ways(), e.oneWay(), passed);
    };
  }

  /** As the edge would be known in the new graph. */
  private Object oldEdge(RouteGraph g, int i) {
    RouteGraph.Edge e = g.edges().get(i);
    List<Integer> passed = Arrays.stream(e.holes()).map(h -> holes[h]).boxed().toList();
    return List.of(nodes[e.a()], nodes[e.b()], e.length(), e.ways(), e.oneWay(), passed);
  }

  /** Those that look the same are matched in their order. */
  private static int[] match(
      int old, int fresh, IntFunction<Object> oldKey, IntFunction<Object> newKey) {
    Map<Object, Deque<Integer>> known = new HashMap<>();
    for (int i = 0; i < fresh; i++) {
      known.computeIfAbsent(newKey.apply(i), k -> new ArrayDeque<>()).add(i);
    }
    int[] out = new int[old];
    for (int i = 0; i < old; i++) {
      Deque<Integer> same = known.get(oldKey.apply(i));
      out[i] = same == null || same.isEmpty() ? GONE : same.removeFirst();
    }
    return out;
  }

  private int arc(int arc) {
    int e = edges[arc >> 1];
    return e < 0 ? GONE : 2 * e + (arc & 1);
  }

  /** The same walk, or null if part of it is gone. Its price is not known any more. */
  Path path(Path p) {
    if (p == null || nodes[p.start()] < 0) {
      return null;
    }
    if (sameGraph) {
      return p;
    }
    int[] arcs = Arrays.stream(p.arcs()).map(this::arc).toArray();
    return Places.has(arcs, GONE) ? null : new Path(nodes[p.start()], arcs, p.price());
  }

  /** Where a work is charged now; null if the work or the place is gone. */
  Places.Place place(Places.Place p) {
    int at =
        switch (p.kind()) {
          case "node" -> nodes[p.at()];
          case "edge" -> edges[p.at()];
          case "hole", HoleRows.ROOM -> holes[p.at()];
          case HoleRows.OWN_ROOM -> works[p.at()];
          default -> arc(p.at());
        };
    int work = p.isRoom() ? p.work() : works[p.work()];
    return at < 0 || work < 0 ? null : new Places.Place(work, p.kind(), at);
  }
}
