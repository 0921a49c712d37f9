package holloway.certify;

import holloway.routing.RouteGraph;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/**
 * What one group pays for a step: its travel, and its shares of each work the step needs. A share
 * is charged only where the graph says that the work is needed, and no share twice on one path: a
 * node is entered once, an edge walked once, a hole passed once. A share of one direction of an
 * edge is one for all on it that need the work, and none where an end needs it.
 */
final class Tolls {
  /** The step cannot be walked. */
  static final long CLOSED = -1;

  private final RouteGraph graph;
  private final Scale scale;
  private final Terrain terrain;
  private final Tariff tariff;

  /** Works that are charged for each direction; none in a certificate without directions. */
  private final boolean[] alone;

  private final boolean[] holeFits;
  private final int group;
  private final int runs;
  private final String cable;

  Tolls(Proof proof, Terrain terrain, Tariff tariff, int group) {
    this.graph = proof.graph;
    this.scale = proof.scale;
    this.alone = proof.alone;
    this.terrain = terrain;
    this.tariff = tariff;
    this.group = group;
    this.runs = proof.commodities.get(group).runs();
    this.cable = proof.commodities.get(group).cable().kind();
    this.holeFits = proof.holeFits(group);
  }

  long start(int node) {
    return terrain.nodes[node] ? node(node) : CLOSED;
  }

  /** Arc 2e walks edge e from a to b, arc 2e + 1 back. */
  long walk(int arc) {
    RouteGraph.Edge e = graph.edges().get(arc >> 1);
    boolean back = (arc & 1) == 1;
    int head = back ? e.a() : e.b();
    boolean closed = !terrain.edges[e.id()] || graph.fares().mayNot(cable, e);
    if (closed || back && e.oneWay() || !terrain.nodes[head]) {
      return CLOSED;
    }
    long sum = Math.multiplyExact((long) runs, scale.edge(e, cable));
    sum = Math.addExact(sum, node(head));
    sum = Math.addExact(sum, of(graph.nodes().get(head).works(), "into", arc, true, Set.of()));
    Set<Integer> ends = new HashSet<>();
    add(ends, graph.nodes().get(e.a()).works());
    add(ends, graph.nodes().get(e.b()).works());
    sum = Math.addExact(sum, of(e.works(), "edge", e.id(), false, Set.of()));
    sum = Math.addExact(sum, of(e.works(), "arc", arc, true, ends));
    long bored = holes(e, arc, ends);
    return bored == CLOSED ? CLOSED : Math.addExact(sum, bored);
  }

  private long node(int v) {
    return of(graph.nodes().get(v).works(), "node", v, false, Set.of());
  }

  /** Each hole is made the way that charges least; the plan makes it one way for all. */
  private long holes(RouteGraph.Edge e, int arc, Set<Integer> ends) {
    Set<Integer> onArc = new HashSet<>(ends);
    add(onArc, e.works());
    long sum = 0;
    for (int h : e.holes()) {
      if (!holeFits[h]) {
        return CLOSED;
      }
      long least = terrain.methods[h].length == 0 ? 0 : Long.MAX_VALUE;
      for (int[] method : terrain.methods[h]) {
        long both = of(method, "hole", h, false, Set.of());
        both = Math.addExact(both, tariff.ownRoom(method, group));
        least = Math.min(least, Math.addExact(both, of(method, "arc", arc, true, onArc)));
      }
      sum = Math.addExact(sum, Math.addExact(least, tariff.room(h, group)));
      // The share of an arc is one for all holes on it, so it is counted at the first.
      graph.holes().get(h).methods().forEach(m -> add(onArc, m.works()));
    }
    return sum;
  }

  private long of(int[] works, String kind, int at, boolean single, Set<Integer> without) {
    Map<Integer, long[]> here = tariff.at(kind, at);
    if (here == null) {
      return 0;
    }
    long sum = 0;
    Set<Integer> seen = new HashSet<>(without);
    for (int w : works) {
      long[] shares = alone[w] == single && seen.add(w) ? here.get(w) : null;
      sum = shares == null ? sum : Math.addExact(sum, shares[group]);
    }
    return sum;
  }

  private static void add(Set<Integer> to, int[] works) {
    for (int w : works) {
      to.add(w);
    }
  }
}
