package holloway.certify;

import holloway.hollow.Way;
import holloway.routing.RouteGraph;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;

/** What no run may use: what the wishes ban, loops, and edges that pass a hole twice. */
final class Forbidden {
  final boolean[] works;
  final boolean[] edges;
  private final Set<String> words;
  private final int ways;

  Forbidden(RouteGraph graph, Set<String> words) {
    this.words = words;
    ways = bits(words);
    works = new boolean[graph.works().size()];
    for (RouteGraph.Work w : graph.works()) {
      works[w.id()] = zoneIsShut(w.zone());
    }
    edges = new boolean[graph.edges().size()];
    for (RouteGraph.Edge e : graph.edges()) {
      edges[e.id()] = isShut(graph, e);
    }
  }

  /** The bits of those words that are ways of working. */
  static int bits(Set<String> words) {
    return Arrays.stream(Way.values())
        .filter(w -> words.contains(w.word()))
        .mapToInt(Way::bit)
        .reduce(0, (a, b) -> a | b);
  }

  /** Who will not go into the attic bores nothing from there, and so on. */
  private boolean zoneIsShut(String zone) {
    boolean way =
        zone.contains("attic")
            ? (ways & Way.ATTIC.bit()) != 0
            : zone.contains("crawlspace")
                ? (ways & Way.UNDER_FLOOR.bit()) != 0
                : zone.contains("ladder") && (ways & Way.OUTSIDE.bit()) != 0;
    return !zone.isEmpty() && (way || words.contains(zone));
  }

  private boolean isShut(RouteGraph graph, RouteGraph.Edge e) {
    if (e.a() == e.b() || (e.ways() & ways) != 0) {
      return true;
    }
    Set<Integer> passed = new HashSet<>();
    for (int h : e.holes()) {
      if (!passed.add(h) || isShut(graph.holes().get(h))) {
        return true;
      }
    }
    return e.pieces().stream().anyMatch(p -> words.contains(place(p)));
  }

  private boolean isShut(RouteGraph.Hole h) {
    return (h.ways() & ways) != 0
        || words.contains(h.site())
        || words.contains(h.hollowA())
        || words.contains(h.hollowB());
  }

  private static String place(RouteGraph.Piece p) {
    return p instanceof RouteGraph.Piece.Leg leg
        ? leg.hollow()
        : ((RouteGraph.Piece.Pass) p).site();
  }

  /** Edges that touch a hollow or go a way, one of which a pinned run must use. */
  static boolean[] touching(RouteGraph graph, String word) {
    int bits = bits(Set.of(word));
    boolean[] out = new boolean[graph.edges().size()];
    for (RouteGraph.Edge e : graph.edges()) {
      out[e.id()] =
          (e.ways() & bits) != 0
              || e.pieces().stream()
                  .anyMatch(p -> p instanceof RouteGraph.Piece.Leg leg && leg.hollow().equals(word))
              || Arrays.stream(e.holes())
                  .mapToObj(graph.holes()::get)
                  .anyMatch(h -> h.hollowA().equals(word) || h.hollowB().equals(word));
    }
    return out;
  }
}
