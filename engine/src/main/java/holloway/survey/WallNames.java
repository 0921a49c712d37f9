package holloway.survey;

import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;

/** Walls in words, by the rooms on both sides of them: nobody knows a wall by its id. */
public final class WallNames {
  /** A face this near still sees what stands in the corner beside it, nanometres. */
  private static final long NEAR = 200_000_000L;

  private WallNames() {}

  /** A whole wall by the rooms along it. */
  public static String of(Wall w) {
    TreeSet<String> rooms = new TreeSet<>();
    w.faces().forEach(f -> rooms.add(f.room()));
    return named(w, rooms);
  }

  /**
   * A wall by the rooms that see it at a distance along it; where another wall joins it and none
   * does, by the nearest ones.
   */
  public static String at(Wall w, long s) {
    TreeSet<String> rooms = new TreeSet<>();
    for (int side : List.of(0, 1)) {
      w.faces().stream()
          .filter(f -> f.side() == side)
          .min(Comparator.comparingLong(f -> away(f, s)))
          .filter(f -> away(f, s) <= Math.max(w.thickness(), NEAR))
          .ifPresent(f -> rooms.add(f.room()));
    }
    return rooms.isEmpty() ? of(w) : named(w, rooms);
  }

  private static long away(Wall.WallFace f, long s) {
    return Math.max(0, Math.max(f.s().lo() - s, s - f.s().hi()));
  }

  private static String named(Wall w, TreeSet<String> rooms) {
    if (rooms.isEmpty()) {
      return "wall " + w.id();
    }
    String word = w.isOuter() ? "outer wall of " : rooms.size() == 1 ? "wall of " : "wall between ";
    String last = rooms.last();
    return rooms.size() == 1
        ? word + last
        : word + String.join(", ", rooms.headSet(last)) + " and " + last;
  }
}
