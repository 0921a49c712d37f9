package holloway.support;

import holloway.routing.RouteGraph;
import java.util.HashSet;
import java.util.Set;
import java.util.TreeSet;

/**
 * Edges of a routing graph by what they are and cost, so that graphs of two houses can be compared:
 * ends with their works, price, holes with every way to make them, and works, all by name.
 */
public final class EdgeNames {
  private final RouteGraph graph;

  public EdgeNames(RouteGraph graph) {
    this.graph = graph;
  }

  public Set<String> all() {
    Set<String> out = new HashSet<>();
    graph.edges().forEach(e -> out.add(of(e)));
    return out;
  }

  public String of(RouteGraph.Edge e) {
    Set<String> ends = new TreeSet<>(Set.of(node(e.a()), node(e.b())));
    Set<String> holes = new TreeSet<>();
    for (int h : e.holes()) {
      holes.add(hole(graph.holes().get(h)));
    }
    return ends + " " + e.price() + " " + holes + " " + works(e.works());
  }

  private String node(int id) {
    RouteGraph.Node n = graph.nodes().get(id);
    return n.name() + works(n.works());
  }

  private String hole(RouteGraph.Hole h) {
    Set<String> methods = new TreeSet<>();
    h.methods().forEach(m -> methods.add(works(m.works()).toString()));
    return h.site() + methods + h.steps();
  }

  private Set<String> works(int[] ids) {
    Set<String> out = new TreeSet<>();
    for (int w : ids) {
      out.add(graph.works().get(w).name() + "=" + graph.works().get(w).price());
    }
    return out;
  }
}
