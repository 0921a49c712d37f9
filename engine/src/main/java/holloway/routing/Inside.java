package holloway.routing;

import holloway.routing.FishMemory.Fish;
import holloway.routing.FishMemory.Found;
import holloway.routing.FishMemory.Hand;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The fishes within one hollow, which are drawn before those across crossings. Many of the latter
 * they beat, because a hand that reaches through the crossing is one of the hollow's own hands.
 *
 * @param found each from a hand to a later one
 * @param plain whether they need no works and no holes but those of their hands
 */
record Inside(List<Found> found, Map<Set<String>, List<Bored>> byNodes, boolean plain) {
  /** A fish with the sites of its holes, none twice. */
  private record Bored(Fish fish, Set<String> holes) {}

  static Inside of(FishMemory.Side side, List<Found> found, boolean plain) {
    Map<Set<String>, List<Bored>> by = new HashMap<>();
    for (Found f : plain ? found : List.<Found>of()) {
      Hand a = side.hands().get(f.from());
      Hand b = side.hands().get(f.to());
      Set<String> holes = holes(a.hole(), "", b.hole());
      if (!a.hole().equals(b.hole()) || a.hole().isEmpty()) {
        by.computeIfAbsent(nodes(a, b), k -> new ArrayList<>()).add(new Bored(f.fish(), holes));
      }
    }
    return new Inside(found, by, plain);
  }

  private static Set<String> nodes(Hand a, Hand b) {
    return Set.of(a.node(), b.node());
  }

  private static Set<String> holes(String a, String b, String c) {
    Set<String> out = new HashSet<>(List.of(a, b, c));
    out.remove("");
    return out;
  }

  /**
   * Whether {@link Dominated} would leave out a fish across a crossing because of one of these. It
   * looks itself as well: what is not seen here costs only time.
   *
   * @param crossed the hole it is bored through, empty where the crossing is open
   */
  boolean beats(Hand a, String crossed, Hand b, Fish f) {
    List<Bored> others = byNodes.get(nodes(a, b));
    if (others == null) {
      return false;
    }
    Set<String> holes = holes(a.hole(), crossed, b.hole());
    return others.stream().anyMatch(o -> o.holes().equals(holes) && beats(o.fish(), f));
  }

  private static boolean beats(Fish a, Fish b) {
    return a.laid().price() <= b.laid().price()
        && a.laid().length() <= b.laid().length()
        && a.ways() == b.ways()
        && hollows(b).equals(hollows(a))
        && sites(b).containsAll(sites(a));
  }

  private static Set<String> hollows(Fish f) {
    Set<String> out = new HashSet<>();
    for (RouteGraph.Piece p : f.laid().pieces()) {
      if (p instanceof RouteGraph.Piece.Leg leg) {
        out.add(leg.hollow());
      }
    }
    return out;
  }

  private static Set<String> sites(Fish f) {
    Set<String> out = new HashSet<>();
    for (RouteGraph.Piece p : f.laid().pieces()) {
      if (p instanceof RouteGraph.Piece.Pass pass) {
        out.add(pass.site());
      }
    }
    return out;
  }
}
