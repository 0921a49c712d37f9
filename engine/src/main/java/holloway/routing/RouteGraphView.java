package holloway.routing;

import java.util.function.IntPredicate;
import org.jgrapht.Graph;
import org.jgrapht.Graphs;
import org.jgrapht.graph.WeightedPseudograph;

/** A routing graph as a JGraphT graph: vertices are node ids, edges are edge ids. */
public final class RouteGraphView {
  private RouteGraphView() {}

  /** All edges, weighted by their price. */
  public static Graph<Integer, Integer> of(RouteGraph graph) {
    return of(graph, graph.edges().stream().mapToLong(RouteGraph.Edge::price).toArray(), e -> true);
  }

  /**
   * The edges that are wanted.
   *
   * @param weights by edge id; exact as long as they stay under 2^53
   */
  public static Graph<Integer, Integer> of(RouteGraph graph, long[] weights, IntPredicate wanted) {
    Graph<Integer, Integer> out = new WeightedPseudograph<>(null, null);
    Graphs.addAllVertices(out, graph.nodes().stream().map(RouteGraph.Node::id).toList());
    for (RouteGraph.Edge e : graph.edges()) {
      if (wanted.test(e.id())) {
        out.addEdge(e.a(), e.b(), e.id());
        out.setEdgeWeight(e.id(), weights[e.id()]);
      }
    }
    return out;
  }
}
