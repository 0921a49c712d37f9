package holloway.routing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Leaves out edges that another edge between the same two hands beats in everything: price, length,
 * sight, holes, works and openings, while it lies in the same hollows and goes the same ways. No
 * plan, ban or pin can prefer such an edge, so neither the best plan nor a bound changes. Lengths
 * are compared in whole micrometres.
 */
final class Dominated {
  private final List<RouteGraph.Hole> holes;

  private Dominated(List<RouteGraph.Hole> holes) {
    this.holes = holes;
  }

  /** The edges that are left, in order, numbered anew. */
  static List<RouteGraph.Edge> without(List<RouteGraph.Edge> edges, List<RouteGraph.Hole> holes) {
    boolean[] beaten = new Dominated(holes).beaten(edges);
    List<RouteGraph.Edge> out = new ArrayList<>(edges.size());
    for (RouteGraph.Edge e : edges) {
      if (!beaten[e.id()]) {
        out.add(e.id() == out.size() ? e : numbered(e, out.size()));
      }
    }
    return out;
  }

  private boolean[] beaten(List<RouteGraph.Edge> edges) {
    int n = edges.size();
    boolean[] out = new boolean[n];
    long[] byEnds = byEnds(edges);
    for (int from = 0; from < n; ) {
      int to = from + 1;
      while (to < n && byEnds[to] / n == byEnds[from] / n) {
        to++;
      }
      for (int i = from; i < to; i++) {
        RouteGraph.Edge e = edges.get((int) (byEnds[i] % n));
        for (int j = from; j < to && !out[e.id()]; j++) {
          out[e.id()] = beats(edges.get((int) (byEnds[j] % n)), e);
        }
      }
      from = to;
    }
    return out;
  }

  /** Sorted numbers, each of an edge's two ends and, within the count of edges, its own. */
  private static long[] byEnds(List<RouteGraph.Edge> edges) {
    int nodes = 0;
    for (RouteGraph.Edge e : edges) {
      nodes = Math.max(nodes, 1 + Math.max(e.a(), e.b()));
    }
    long[] out = new long[edges.size()];
    for (RouteGraph.Edge e : edges) {
      long ends = (long) Math.min(e.a(), e.b()) * nodes + Math.max(e.a(), e.b());
      out[e.id()] = Math.addExact(Math.multiplyExact(ends, (long) out.length), e.id());
    }
    Arrays.sort(out);
    return out;
  }

  /** Of two that are alike in everything the earlier one stays. */
  private boolean beats(RouteGraph.Edge a, RouteGraph.Edge b) {
    return a.id() != b.id()
        && a.price() <= b.price()
        && micrometres(a) <= micrometres(b)
        && a.visible() <= b.visible()
        && a.ways() == b.ways()
        && isEachOnce(a.holes())
        && isWithin(a.holes(), b.holes())
        && isWithin(a.works(), b.works())
        && passesNoMore(a, b)
        && liesNowhereElse(a, b)
        && liesNowhereElse(b, a)
        && (a.id() < b.id() || !alike(a, b));
  }

  /** Of edges the first of which beats the second. */
  private boolean alike(RouteGraph.Edge a, RouteGraph.Edge b) {
    return a.price() == b.price()
        && micrometres(a) == micrometres(b)
        && a.visible() == b.visible()
        && isWithin(b.holes(), a.holes())
        && isEachOnce(b.holes())
        && isWithin(b.works(), a.works())
        && passesNoMore(b, a);
  }

  /** Of a slanting path the length hangs by a few nanometres on the end that it is told from. */
  private static long micrometres(RouteGraph.Edge e) {
    return Math.round(e.length() / 1e3);
  }

  // Edges have a handful of holes, works and pieces each: looking through them beats any index.

  private static boolean isEachOnce(int[] all) {
    for (int i = 1; i < all.length; i++) {
      for (int j = 0; j < i; j++) {
        if (all[i] == all[j]) {
          return false;
        }
      }
    }
    return true;
  }

  private static boolean isWithin(int[] some, int[] others) {
    for (int v : some) {
      boolean found = false;
      for (int o : others) {
        found |= o == v;
      }
      if (!found) {
        return false;
      }
    }
    return true;
  }

  /** Every opening that the first passes the second passes too. */
  private static boolean passesNoMore(RouteGraph.Edge a, RouteGraph.Edge b) {
    for (RouteGraph.Piece p : a.pieces()) {
      if (p instanceof RouteGraph.Piece.Pass pass && !passes(b, pass.site())) {
        return false;
      }
    }
    return true;
  }

  private static boolean passes(RouteGraph.Edge e, String site) {
    for (RouteGraph.Piece p : e.pieces()) {
      if (p instanceof RouteGraph.Piece.Pass pass && pass.site().equals(site)) {
        return true;
      }
    }
    return false;
  }

  /** Every hollow of the first, beside its holes or of its legs, is one of the second's. */
  private boolean liesNowhereElse(RouteGraph.Edge a, RouteGraph.Edge b) {
    for (int h : a.holes()) {
      RouteGraph.Hole hole = holes.get(h);
      if (!liesIn(b, hole.hollowA()) || !liesIn(b, hole.hollowB())) {
        return false;
      }
    }
    for (RouteGraph.Piece p : a.pieces()) {
      if (p instanceof RouteGraph.Piece.Leg leg && !liesIn(b, leg.hollow())) {
        return false;
      }
    }
    return true;
  }

  private boolean liesIn(RouteGraph.Edge e, String hollow) {
    for (RouteGraph.Piece p : e.pieces()) {
      if (p instanceof RouteGraph.Piece.Leg leg && leg.hollow().equals(hollow)) {
        return true;
      }
    }
    for (int h : e.holes()) {
      if (holes.get(h).hollowA().equals(hollow) || holes.get(h).hollowB().equals(hollow)) {
        return true;
      }
    }
    return false;
  }

  private static RouteGraph.Edge numbered(RouteGraph.Edge e, int id) {
    return new RouteGraph.Edge(
        id,
        e.a(),
        e.b(),
        e.price(),
        e.length(),
        e.visible(),
        e.holes(),
        e.works(),
        e.ways(),
        e.pieces());
  }
}
