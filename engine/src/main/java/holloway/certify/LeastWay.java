package holloway.certify;

import holloway.routing.RouteGraph;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalLong;
import java.util.PriorityQueue;

/**
 * Dijkstra's algorithm (E. W. Dijkstra, A note on two problems in connexion with graphs, 1959) as
 * it stands in books. A pinned group walks in two storeys, the upper one entered by a pinned edge.
 */
final class LeastWay {
  private record Reached(long distance, int state) {}

  private final List<List<Integer>> arcsFrom;
  private final RouteGraph graph;

  LeastWay(RouteGraph graph) {
    this.graph = graph;
    arcsFrom = new ArrayList<>();
    graph.nodes().forEach(v -> arcsFrom.add(new ArrayList<>()));
    for (RouteGraph.Edge e : graph.edges()) {
      arcsFrom.get(e.a()).add(2 * e.id());
      arcsFrom.get(e.b()).add(2 * e.id() + 1);
    }
  }

  /** The least that a route of the group pays; empty if it has none. */
  OptionalLong of(Commodity c, Tolls tolls) {
    int nodes = arcsFrom.size();
    long[] best = new long[2 * nodes];
    Arrays.fill(best, Long.MAX_VALUE);
    PriorityQueue<Reached> open =
        new PriorityQueue<>(
            Comparator.comparingLong(Reached::distance).thenComparingInt(Reached::state));
    for (int s : c.from()) {
      reach(s, tolls.start(s), best, open);
    }
    while (!open.isEmpty()) {
      Reached r = open.poll();
      boolean done = c.pin() == null || r.state() >= nodes;
      int node = r.state() % nodes;
      if (r.distance() == best[r.state()] && done && c.to().contains(node)) {
        return OptionalLong.of(r.distance());
      }
      if (r.distance() == best[r.state()]) {
        for (int arc : arcsFrom.get(node)) {
          long toll = tolls.walk(arc);
          boolean up = r.state() >= nodes || c.pin() != null && c.pin()[arc >> 1];
          if (toll != Tolls.CLOSED) {
            long far = Math.addExact(r.distance(), toll);
            reach(head(arc) + (up ? nodes : 0), far, best, open);
          }
        }
      }
    }
    return OptionalLong.empty();
  }

  private int head(int arc) {
    RouteGraph.Edge e = graph.edges().get(arc >> 1);
    return (arc & 1) == 0 ? e.b() : e.a();
  }

  private static void reach(int state, long distance, long[] best, PriorityQueue<Reached> open) {
    if (distance >= 0 && distance < best[state]) {
      best[state] = distance;
      open.add(new Reached(distance, state));
    }
  }
}
