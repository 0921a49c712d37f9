package holloway.pipeline;

import holloway.hollow.WorkKind;
import holloway.routing.RouteGraph;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;

/** A routing graph in which one hole is easier to have, all else the same. */
final class Eased {
  private Eased() {}

  /** Every bore of the hole at half its price. */
  static RouteGraph half(RouteGraph g, int hole) {
    Set<Integer> bores = new TreeSet<>();
    g.holes().get(hole).methods().forEach(m -> IntStream.of(m.works()).forEach(bores::add));
    List<RouteGraph.Work> works = new ArrayList<>();
    for (RouteGraph.Work w : g.works()) {
      boolean cheaper = bores.contains(w.id()) && w.kind() == WorkKind.BORE;
      long price = cheaper ? w.price() / 2 : w.price();
      works.add(
          new RouteGraph.Work(w.id(), w.name(), w.kind(), price, w.holes(), w.patches(), w.zone()));
    }
    return new RouteGraph(g.nodes(), g.edges(), g.holes(), works, g.terminals());
  }

  /** The hole is there already: no edge has to bore it. */
  static RouteGraph open(RouteGraph g, int hole) {
    List<RouteGraph.Edge> edges = new ArrayList<>();
    for (RouteGraph.Edge e : g.edges()) {
      int[] rest = IntStream.of(e.holes()).filter(h -> h != hole).toArray();
      edges.add(
          new RouteGraph.Edge(
              e.id(),
              e.a(),
              e.b(),
              e.price(),
              e.length(),
              e.visible(),
              rest,
              e.works(),
              e.ways(),
              e.pieces()));
    }
    return new RouteGraph(g.nodes(), edges, g.holes(), g.works(), g.terminals());
  }
}
