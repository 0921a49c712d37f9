package holloway.routing;

import holloway.geometry.Point3;
import holloway.hollow.Hollow;
import holloway.hollow.Site;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/**
 * Fishes that were found in this house before, at the same prices. They hang on nothing but the
 * hollow and the hands that reach into it: where those are what they were, they need not be looked
 * for again, whatever has become of the rest of the house. May be used on several threads.
 */
final class FishMemory {
  /**
   * A way for a hand into a blind hollow, without the numbers that a graph gives.
   *
   * @param node the hand's name; {@code entry} where the cable comes into the hollow
   * @param lead pieces from the hand's node to the entry
   * @param hole site of the hole of the lead, empty where it has none
   * @param access the hand is in the hollow itself
   */
  record Hand(
      String node, Point3 entry, List<RouteGraph.Piece> lead, String hole, boolean access) {}

  /** A fish from one hand of a list to one of the same or another list. */
  record Found(int from, int to, GraphDraft.Laid laid, int ways) {}

  /** A hollow on one side of a crossing, and the hands that reach into it, in order. */
  record Side(Hollow hollow, List<Hand> hands) {}

  private record Crossed(Site site, boolean bored, Side one, Side other) {}

  private record Reach(String hollow, Point3 from, Point3 to) {}

  private record Reached(Hollow hollow, List<Point3> path) {}

  private final Remembered<Side, List<Found>> inside = new Remembered<>();
  private final Remembered<Crossed, List<Found>> crossed = new Remembered<>();
  private final Map<Reach, Reached> reached = new ConcurrentHashMap<>();

  /** Fishes within a hollow. */
  List<Found> within(Hollow h, List<Hand> hands, Supplier<List<Found>> look) {
    return inside.of(h.id(), new Side(h, hands), look);
  }

  /** Fishes across one crossing; {@code bored}: it is a hole, not an opening that is there. */
  List<Found> across(Site s, boolean bored, Side one, Side other, Supplier<List<Found>> look) {
    return crossed.of(s.id(), new Crossed(s, bored, one, other), look);
  }

  /** An arm's way inside a hollow. */
  List<Point3> reach(Hollow h, Point3 from, Point3 to, Supplier<List<Point3>> look) {
    Reach key = new Reach(h.id(), from, to);
    Reached was = reached.get(key);
    if (was != null && was.hollow().equals(h)) {
      return was.path();
    }
    List<Point3> path = look.get();
    reached.put(key, new Reached(h, path));
    return path;
  }
}
