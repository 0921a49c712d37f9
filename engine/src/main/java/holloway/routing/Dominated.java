package holloway.routing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Leaves out edges that another edge between the same two hands beats in everything: price, length,
 * sight, holes, works and openings, while it lies in the same hollows and goes the same ways. No
 * plan, ban or pin can prefer such an edge, so neither the best plan nor a bound changes.
 */
final class Dominated {
  private record Ends(int low, int high) {}

  private record Traits(
      RouteGraph.Edge edge,
      Set<Integer> holes,
      Set<Integer> works,
      Set<String> hollows,
      Set<String> sites) {}

  private final List<RouteGraph.Hole> holes;

  private Dominated(List<RouteGraph.Hole> holes) {
    this.holes = holes;
  }

  /** The edges that are left, in order, numbered anew. */
  static List<RouteGraph.Edge> without(List<RouteGraph.Edge> edges, List<RouteGraph.Hole> holes) {
    Dominated d = new Dominated(holes);
    Map<Ends, List<RouteGraph.Edge>> parallel = new HashMap<>();
    for (RouteGraph.Edge e : edges) {
      Ends ends = new Ends(Math.min(e.a(), e.b()), Math.max(e.a(), e.b()));
      parallel.computeIfAbsent(ends, k -> new ArrayList<>(2)).add(e);
    }
    boolean[] beaten = new boolean[edges.size()];
    for (List<RouteGraph.Edge> same : parallel.values()) {
      // Most stand alone, and traits cost more than the look.
      List<Traits> list = same.size() < 2 ? List.of() : same.stream().map(d::traits).toList();
      for (Traits t : list) {
        beaten[t.edge().id()] = list.stream().anyMatch(o -> beats(o, t));
      }
    }
    List<RouteGraph.Edge> out = new ArrayList<>();
    for (RouteGraph.Edge e : edges) {
      if (!beaten[e.id()]) {
        out.add(numbered(e, out.size()));
      }
    }
    return out;
  }

  private Traits traits(RouteGraph.Edge e) {
    Set<Integer> passed = new TreeSet<>();
    Set<Integer> works = new TreeSet<>();
    Set<String> hollows = new TreeSet<>();
    Set<String> sites = new TreeSet<>();
    for (int h : e.holes()) {
      passed.add(h);
      hollows.add(holes.get(h).hollowA());
      hollows.add(holes.get(h).hollowB());
    }
    for (int w : e.works()) {
      works.add(w);
    }
    for (RouteGraph.Piece p : e.pieces()) {
      if (p instanceof RouteGraph.Piece.Leg leg) {
        hollows.add(leg.hollow());
      } else if (p instanceof RouteGraph.Piece.Pass pass) {
        sites.add(pass.site());
      }
    }
    return new Traits(e, passed, works, hollows, sites);
  }

  /** Of two that are alike in everything the earlier one stays. */
  private static boolean beats(Traits one, Traits other) {
    RouteGraph.Edge a = one.edge();
    RouteGraph.Edge b = other.edge();
    boolean noWorse =
        a.id() != b.id()
            && a.price() <= b.price()
            && a.length() <= b.length()
            && a.visible() <= b.visible()
            && a.ways() == b.ways()
            && one.holes().size() == a.holes().length
            && other.holes().containsAll(one.holes())
            && other.works().containsAll(one.works())
            && other.sites().containsAll(one.sites())
            && one.hollows().equals(other.hollows());
    return noWorse && (a.id() < b.id() || !alike(one, other));
  }

  private static boolean alike(Traits one, Traits other) {
    RouteGraph.Edge a = one.edge();
    RouteGraph.Edge b = other.edge();
    return a.price() == b.price()
        && a.length() == b.length()
        && a.visible() == b.visible()
        && one.holes().equals(other.holes())
        && other.holes().size() == b.holes().length
        && one.works().equals(other.works())
        && one.sites().equals(other.sites());
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
