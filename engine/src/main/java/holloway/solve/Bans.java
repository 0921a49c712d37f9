package holloway.solve;

import holloway.hollow.Way;
import holloway.routing.RouteGraph;
import java.util.Set;

/** Which works and edges a set of banned words shuts. */
final class Bans {
  private final RouteGraph graph;
  private final Set<String> words;
  private final int ways;

  Bans(RouteGraph graph, Set<String> words) {
    this.graph = graph;
    this.words = Set.copyOf(words);
    int bits = 0;
    for (Way w : Way.values()) {
      bits |= words.contains(w.word()) ? w.bit() : 0;
    }
    this.ways = bits;
  }

  /** A zone is shut with its way: who will not go into the attic bores nothing from there. */
  boolean[] works() {
    boolean[] out = new boolean[graph.works().size()];
    for (RouteGraph.Work w : graph.works()) {
      out[w.id()] = !w.zone().isEmpty() && (words.contains(w.zone()) || (wayOf(w) & ways) != 0);
    }
    return out;
  }

  /** The way a zone belongs to, as a bit, or 0. */
  static int wayOf(RouteGraph.Work w) {
    if (w.zone().contains("attic")) {
      return Way.ATTIC.bit();
    }
    if (w.zone().contains("crawlspace")) {
      return Way.UNDER_FLOOR.bit();
    }
    return w.zone().contains("ladder") ? Way.OUTSIDE.bit() : 0;
  }

  boolean[] edges() {
    boolean[] holes = holes();
    boolean[] out = new boolean[graph.edges().size()];
    for (RouteGraph.Edge e : graph.edges()) {
      out[e.id()] = (e.ways() & ways) != 0 || e.a() == e.b() || passesShut(e, holes);
    }
    return out;
  }

  private boolean[] holes() {
    boolean[] out = new boolean[graph.holes().size()];
    for (RouteGraph.Hole h : graph.holes()) {
      out[h.id()] =
          words.contains(h.site())
              || words.contains(h.hollowA())
              || words.contains(h.hollowB())
              || (h.ways() & ways) != 0;
    }
    return out;
  }

  private boolean passesShut(RouteGraph.Edge e, boolean[] shutHoles) {
    int[] holes = e.holes();
    for (int i = 0; i < holes.length; i++) {
      if (shutHoles[holes[i]]) {
        return true;
      }
      for (int j = 0; j < i; j++) {
        if (holes[i] == holes[j]) {
          return true;
        }
      }
    }
    if (words.isEmpty()) {
      return false;
    }
    for (RouteGraph.Piece p : e.pieces()) {
      if (p instanceof RouteGraph.Piece.Leg leg && words.contains(leg.hollow())
          || p instanceof RouteGraph.Piece.Pass pass && words.contains(pass.site())) {
        return true;
      }
    }
    return false;
  }

  static boolean liesIn(RouteGraph graph, RouteGraph.Edge e, String hollow) {
    for (RouteGraph.Piece p : e.pieces()) {
      if (p instanceof RouteGraph.Piece.Leg leg && leg.hollow().equals(hollow)) {
        return true;
      }
    }
    for (int h : e.holes()) {
      RouteGraph.Hole hole = graph.holes().get(h);
      if (hole.hollowA().equals(hollow) || hole.hollowB().equals(hollow)) {
        return true;
      }
    }
    return false;
  }
}
