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
  private final List<Drawn> edges;
  private final List<RouteGraph.Hole> holes;

  /** By hole: bits of the hollows beside it. */
  private final long[] beside;

  /** By edge that has others beside it: bits of its holes, and of the hollows it lies in. */
  private final long[] bored;

  private final long[] hollows;

  private Dominated(List<Drawn> edges, List<RouteGraph.Hole> holes) {
    this.edges = edges;
    this.holes = holes;
    bored = new long[edges.size()];
    hollows = new long[edges.size()];
    beside = new long[holes.size()];
    for (int h = 0; h < beside.length; h++) {
      beside[h] = Laid.bit(holes.get(h).hollowA()) | Laid.bit(holes.get(h).hollowB());
    }
  }

  /** The edges that are left, in order, numbered. */
  static List<RouteGraph.Edge> without(List<Drawn> edges, List<RouteGraph.Hole> holes) {
    boolean[] beaten = new Dominated(edges, holes).beaten();
    List<RouteGraph.Edge> out = new ArrayList<>(edges.size());
    for (int e = 0; e < beaten.length; e++) {
      if (!beaten[e]) {
        out.add(edges.get(e).numbered(out.size()));
      }
    }
    return out;
  }

  private boolean[] beaten() {
    int n = edges.size();
    boolean[] out = new boolean[n];
    long[] byEnds = new long[n];
    int[] first = byLowerEnd(byEnds);
    for (int low = 0; low + 1 < first.length; low++) {
      Arrays.sort(byEnds, first[low], first[low + 1]);
      for (int from = first[low]; from < first[low + 1]; ) {
        int to = from + 1;
        while (to < first[low + 1] && byEnds[to] >> 32 == byEnds[from] >> 32) {
          to++;
        }
        if (to - from > 1) {
          among(byEnds, from, to, out);
        }
        from = to;
      }
    }
    return out;
  }

  /**
   * Puts the edges in the order of their lower end, each as its higher end and, in the low half,
   * its own place.
   *
   * @return where each lower end begins, and where all end
   */
  private int[] byLowerEnd(long[] out) {
    int nodes = 0;
    for (Drawn e : edges) {
      nodes = Math.max(nodes, 1 + Math.max(e.a(), e.b()));
    }
    int[] first = new int[nodes + 1];
    for (Drawn e : edges) {
      first[Math.min(e.a(), e.b()) + 1]++;
    }
    for (int i = 0; i < nodes; i++) {
      first[i + 1] += first[i];
    }
    int[] next = Arrays.copyOf(first, nodes);
    for (int i = 0; i < out.length; i++) {
      Drawn e = edges.get(i);
      out[next[Math.min(e.a(), e.b())]++] = (long) Math.max(e.a(), e.b()) << 32 | i;
    }
    return first;
  }

  /** Of edges with the same two ends. */
  private void among(long[] byEnds, int from, int to, boolean[] out) {
    for (int i = from; i < to; i++) {
      mark((int) byEnds[i]);
    }
    for (int i = from; i < to; i++) {
      int e = (int) byEnds[i];
      for (int j = from; j < to && !out[e]; j++) {
        int o = (int) byEnds[j];
        out[e] = o != e && may(o, e) && beats(edges.get(o), edges.get(e), o < e);
      }
    }
  }

  private void mark(int edge) {
    Drawn e = edges.get(edge);
    long lies = e.laid().hollows();
    long passes = 0;
    for (int h : e.holes()) {
      passes |= 1L << h;
      lies |= beside[h];
    }
    bored[edge] = passes;
    hollows[edge] = lies;
  }

  /** False only where the first cannot beat the second. */
  private boolean may(int a, int b) {
    return hollows[a] == hollows[b]
        && (bored[a] & ~bored[b]) == 0
        && (edges.get(a).laid().sites() & ~edges.get(b).laid().sites()) == 0;
  }

  /**
   * Of two that are alike in everything the earlier one stays.
   *
   * @param earlier whether the first is
   */
  private boolean beats(Drawn a, Drawn b, boolean earlier) {
    return a.laid().price() <= b.laid().price()
        && micrometres(a) <= micrometres(b)
        && a.seen() <= b.seen()
        && a.ways() == b.ways()
        && isEachOnce(a.holes())
        && isWithin(a.holes(), b.holes())
        && isWithin(a.works(), b.works())
        && passesNoMore(a, b)
        && liesNowhereElse(a, b)
        && liesNowhereElse(b, a)
        && (earlier || !alike(a, b));
  }

  /** Of edges the first of which beats the second. */
  private boolean alike(Drawn a, Drawn b) {
    return a.laid().price() == b.laid().price()
        && micrometres(a) == micrometres(b)
        && a.seen() == b.seen()
        && isWithin(b.holes(), a.holes())
        && isEachOnce(b.holes())
        && isWithin(b.works(), a.works())
        && passesNoMore(b, a);
  }

  /** Of a slanting path the length hangs by a few nanometres on the end that it is told from. */
  private static long micrometres(Drawn e) {
    return Math.round(e.laid().length() / 1e3);
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
  private static boolean passesNoMore(Drawn a, Drawn b) {
    for (RouteGraph.Piece p : a.laid().pieces()) {
      if (p instanceof RouteGraph.Piece.Pass pass && !passes(b, pass.site())) {
        return false;
      }
    }
    return true;
  }

  private static boolean passes(Drawn e, String site) {
    for (RouteGraph.Piece p : e.laid().pieces()) {
      if (p instanceof RouteGraph.Piece.Pass pass && pass.site().equals(site)) {
        return true;
      }
    }
    return false;
  }

  /** Every hollow of the first, beside its holes or of its legs, is one of the second's. */
  private boolean liesNowhereElse(Drawn a, Drawn b) {
    for (int h : a.holes()) {
      RouteGraph.Hole hole = holes.get(h);
      if (!liesIn(b, hole.hollowA()) || !liesIn(b, hole.hollowB())) {
        return false;
      }
    }
    for (RouteGraph.Piece p : a.laid().pieces()) {
      if (p instanceof RouteGraph.Piece.Leg leg && !liesIn(b, leg.hollow())) {
        return false;
      }
    }
    return true;
  }

  private boolean liesIn(Drawn e, String hollow) {
    for (RouteGraph.Piece p : e.laid().pieces()) {
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
}
