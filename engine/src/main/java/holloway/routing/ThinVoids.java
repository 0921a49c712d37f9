package holloway.routing;

import holloway.catalog.Cable;
import holloway.hollow.Hollow;
import holloway.hollow.HollowHouse;
import holloway.hollow.HollowKind;
import holloway.hollow.Refused;
import holloway.request.Request;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Which edges a kind of cable may not use because it, or the head it is pulled by, is thicker than
 * the void over a strapped ceiling or behind the board of a wall.
 */
final class ThinVoids {
  private final HollowHouse house;
  private final Request request;

  /** What is too thin for which cable, for "why not". */
  final List<Refused> refused;

  ThinVoids(HollowHouse house, Request request, List<Refused> refused) {
    this.house = house;
    this.request = request;
    this.refused = refused;
  }

  /** The graph as these voids leave it. */
  RouteGraph over(RouteGraph g) {
    Map<String, Hollow> voids = new TreeMap<>();
    house.hollows().stream()
        .filter(h -> h.kind() == HollowKind.BATTEN_VOID || h.kind().isBehindBoard())
        .forEach(h -> voids.put(h.id(), h));
    Map<String, Set<Integer>> shut = new TreeMap<>(g.fares().shut());
    for (String kind : new TreeSet<>(request.runs().stream().map(r -> r.cable()).toList())) {
      Set<String> thin = thin(kind, voids);
      Set<Integer> edges = new TreeSet<>(shut.getOrDefault(kind, Set.of()));
      for (RouteGraph.Edge e : thin.isEmpty() ? List.<RouteGraph.Edge>of() : g.edges()) {
        if (e.pieces().stream()
            .anyMatch(p -> p instanceof RouteGraph.Piece.Leg l && thin.contains(l.hollow()))) {
          edges.add(e.id());
        }
      }
      if (!edges.isEmpty()) {
        shut.put(kind, edges);
      }
    }
    return shut.equals(g.fares().shut())
        ? g
        : new RouteGraph(
            g.nodes(),
            g.edges(),
            g.holes(),
            g.works(),
            g.terminals(),
            new Fares(g.fares().metre(), shut));
  }

  private Set<String> thin(String kind, Map<String, Hollow> voids) {
    Set<String> out = new TreeSet<>();
    long thick =
        Cable.find(kind).map(c -> Math.max(c.outside().nm(), c.pullHead().nm())).orElse(0L);
    Set<String> told = new TreeSet<>();
    for (Hollow h : voids.values()) {
      boolean wall = h.kind().isBehindBoard();
      long depth = (wall ? h.clear().y() : h.clear().z()).length();
      if (thick > depth) {
        out.add(h.id());
        if (told.add(h.owner())) {
          refused.add(
              new Refused(
                  (wall ? "the void behind the board of " : "strapped ceiling of ") + h.owner(),
                  h.frame().toWorld(h.clear().centre()),
                  "%s is %.1f mm thick with its pull head, the void is %.1f mm deep"
                      .formatted(kind, thick / 1e6, depth / 1e6),
                  "house file"));
        }
      }
    }
    return out;
  }
}
