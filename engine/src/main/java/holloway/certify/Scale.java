package holloway.certify;

import holloway.routing.RouteGraph;
import java.util.Collection;

/** All prices of a graph on the scale of a profile, units. */
final class Scale {
  /** What a hole counts for when holes are to be fewest. */
  private static final long A_HOLE = 10_000_000_000L;

  final long[] works;
  private final long[] edges;
  private final RouteGraph graph;
  private final boolean fewest;

  Scale(RouteGraph graph, String profile) {
    this.graph = graph;
    fewest = profile.equals("fewest-holes");
    boolean shortest = profile.equals("shortest");
    if (!fewest && !shortest && !profile.equals("least-work")) {
      throw new Unproven("there is no profile '" + profile + "'");
    }
    works =
        graph.works().stream()
            .mapToLong(w -> Math.addExact(w.price(), fewest ? holes(w.holes()) : 0))
            .toArray();
    edges =
        graph.edges().stream()
            .mapToLong(e -> Math.addExact(e.price(), shortest ? e.length() : 0))
            .toArray();
  }

  private static long holes(int count) {
    return Math.multiplyExact(A_HOLE, (long) count);
  }

  /** What one cable of a kind pays for an edge, works and holes apart. */
  long edge(RouteGraph.Edge e, String cable) {
    return Math.addExact(edges[e.id()], graph.fares().of(cable, e));
  }

  /** Price of a second bore beside the first, or -1 where there is no room for one. */
  long second(RouteGraph.Hole h) {
    return h.second().isPresent()
        ? Math.addExact(h.second().getAsLong(), fewest ? holes(1) : 0)
        : -1;
  }

  /** Every plan's price is a whole multiple of this, with cables of these kinds. */
  long grain(Collection<String> cables) {
    long g = 0;
    for (long p : works) {
      g = divisor(g, p);
    }
    for (long p : edges) {
      g = divisor(g, p);
    }
    for (String kind : cables) {
      for (RouteGraph.Edge e : graph.edges()) {
        g = divisor(g, graph.fares().of(kind, e));
      }
    }
    for (RouteGraph.Hole h : graph.holes()) {
      g = divisor(g, Math.max(0, second(h)));
      for (RouteGraph.Step s : h.steps()) {
        g = divisor(g, s.extra());
      }
    }
    return Math.max(1, g);
  }

  private static long divisor(long a, long b) {
    return b == 0 ? a : divisor(b, Math.floorMod(a, b));
  }
}
