package holloway.routing;

import holloway.geometry.Point3;
import holloway.hollow.Hollow;
import holloway.hollow.Site;
import java.util.ArrayList;
import java.util.HashMap;
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

  /**
   * A fish, for the whole of its way from hand to hand.
   *
   * @param ways bits of the hollows it goes through
   */
  record Fish(Laid laid, int ways) {}

  /** A fish from one hand of a list to one of the same or another list. */
  record Found(int from, int to, Fish fish) {}

  /** A blind hollow and the hands that reach into it, in order. */
  record Side(Hollow hollow, List<Hand> hands) {}

  /** Looks for the fish between two hands, by their places in the lists; null where none goes. */
  interface Look {
    Fish between(int from, int to);
  }

  private record Crossed(Site site, boolean bored, Side one, Side other) {
    boolean isAt(Crossed o) {
      return bored == o.bored
          && site.equals(o.site)
          && one.hollow().equals(o.one.hollow())
          && other.hollow().equals(o.other.hollow());
    }

    boolean beaten(Found f, Inside inOne, Inside inOther) {
      Hand a = one.hands().get(f.from());
      Hand b = other.hands().get(f.to());
      String hole = bored ? site.id() : "";
      return inOne.beats(a, hole, b, f.fish()) || inOther.beats(a, hole, b, f.fish());
    }
  }

  /**
   * Fishes across one crossing.
   *
   * @param left without those that a fish within one of its hollows beats
   */
  private record Across(List<Found> found, List<Found> left) {}

  private record Reach(String hollow, Point3 from, Point3 to) {}

  private record Reached(Hollow hollow, List<Point3> path) {}

  private final Remembered<Side, Side> sides = new Remembered<>();
  private final Remembered<Side, Inside> inside = new Remembered<>();
  private final Remembered<Crossed, Across> crossed = new Remembered<>();
  private final Map<Reach, Reached> reached = new ConcurrentHashMap<>();

  /** The same object for the same hollow and hands, so that to compare it costs nothing. */
  Side side(Hollow h, List<Hand> hands) {
    Side now = new Side(h, List.copyOf(hands));
    return sides.of(h.id(), now, (was, nothing) -> now);
  }

  /**
   * Fishes within a hollow.
   *
   * @param plain whether they need nothing but what their hands need
   */
  Inside within(Side side, boolean plain, Look look) {
    return inside.of(
        side.hollow().id(),
        side,
        (was, then) -> {
          Pairs pairs = new Pairs(side, side);
          if (was != null && was.hollow().equals(side.hollow())) {
            pairs.but(was, was, then.found());
          }
          return Inside.of(side, pairs.all(true, look), plain);
        });
  }

  /**
   * Fishes across one crossing, but for those that a fish within one of its hollows beats.
   *
   * @param bored it is a hole, not an opening that is there
   * @param inOne fishes within the one hollow; {@code inOther} within the other
   */
  List<Found> across(
      Site s, boolean bored, Side one, Side other, Inside inOne, Inside inOther, Look look) {
    Crossed now = new Crossed(s, bored, one, other);
    Across all =
        crossed.of(
            s.id(),
            now,
            (was, then) -> {
              Pairs pairs = new Pairs(one, other);
              if (was != null && was.isAt(now)) {
                pairs.but(was.one(), was.other(), then.found());
              }
              List<Found> found = pairs.all(false, look);
              return new Across(
                  found, found.stream().filter(f -> !now.beaten(f, inOne, inOther)).toList());
            });
    return all.left();
  }

  /**
   * Hands of two lists, two by two. A fish hangs on nothing but its hollows and its own two hands:
   * where both were there before, what came of it then is taken.
   */
  private static final class Pairs {
    private final List<Hand> here;
    private final List<Hand> there;
    private int[] wasHere;
    private int[] wasThere;
    private final Map<Long, Fish> known = new HashMap<>();

    Pairs(Side one, Side other) {
      here = one.hands();
      there = other.hands();
      wasHere = places(here, List.of());
      wasThere = places(there, List.of());
    }

    /** Of the same hollows with these hands this was found before. */
    Pairs but(Side one, Side other, List<Found> found) {
      wasHere = places(here, one.hands());
      wasThere = places(there, other.hands());
      found.forEach(f -> known.put(key(f.from(), f.to()), f.fish()));
      return this;
    }

    /**
     * @param later in one list, each pair once: the second hand stands later
     */
    List<Found> all(boolean later, Look look) {
      List<Found> out = new ArrayList<>();
      for (int i = 0; i < here.size(); i++) {
        for (int j = later ? i + 1 : 0; j < there.size(); j++) {
          int from = wasHere[i];
          int to = wasThere[j];
          boolean looked = from >= 0 && to >= 0 && (!later || from < to);
          Fish fish = looked ? known.get(key(from, to)) : look.between(i, j);
          if (fish != null) {
            out.add(new Found(i, j, fish));
          }
        }
      }
      return out;
    }

    private static long key(int from, int to) {
      return (long) from << 32 | to;
    }

    /** Where each hand stood before; −1 where it is new. */
    private static int[] places(List<Hand> now, List<Hand> before) {
      Map<Hand, Integer> at = new HashMap<>();
      for (int i = 0; i < before.size(); i++) {
        at.put(before.get(i), i);
      }
      return now.stream().mapToInt(h -> at.getOrDefault(h, -1)).toArray();
    }
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
