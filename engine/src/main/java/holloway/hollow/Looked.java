package holloway.hollow;

import holloway.geometry.Point2;
import holloway.geometry.Point3;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * What makers of crossings look up of a house again and again for each place of its ends, though it
 * hangs on the house alone; which of the places is free, each draft of the house sees. Nothing is
 * remembered before all that does not hang on the ends is there. May be used on several threads.
 */
final class Looked {
  private static final int MOST = 20_000;

  /** Axes that a bore out of a room could have into one hollow, best first; never none. */
  record Into(String hollow, List<Point3[]> axes) {}

  /**
   * What is over a room's ceiling at some places.
   *
   * @param open the space under open joists there
   */
  record Over(List<Into> attics, Optional<String> open, List<Into> bays) {}

  private record At(String room, List<Point2> points) {
    At {
      points = List.copyOf(points);
    }
  }

  private record Side(String wall, int side) {}

  private final boolean remembers;
  private final Known<At, List<Point2>> bare = new Known<>(MOST);
  private final Known<At, Over> over = new Known<>(MOST);
  private final Known<At, List<Into>> under = new Known<>(MOST);
  private final Known<Side, List<Hollow>> behind = new Known<>(MOST);
  private final Known<String, List<List<Point2>>> spots = new Known<>(MOST);

  Looked(boolean remembers) {
    this.remembers = remembers;
  }

  private <K, V> V of(Known<K, V> known, K asked, Supplier<V> look) {
    return remembers ? known.of(asked, look) : look.get();
  }

  /** Those of the points of a ceiling that nothing hangs under. */
  List<Point2> bare(String room, List<Point2> points, Supplier<List<Point2>> look) {
    return of(bare, new At(room, points), look);
  }

  /** What is over some points of a ceiling. */
  Over over(String room, List<Point2> points, Supplier<Over> look) {
    return of(over, new At(room, points), look);
  }

  /** What is under some points of a floor. */
  List<Into> under(String room, List<Point2> points, Supplier<List<Into>> look) {
    return of(under, new At(room, points), look);
  }

  /** The hollows behind the board on one side of a wall. */
  List<Hollow> behind(String wall, int side, Supplier<List<Hollow>> look) {
    return of(behind, new Side(wall, side), look);
  }

  /** Where a ceiling is tried whatever is wanted, by the id of what it belongs to. */
  List<List<Point2>> spots(String of, Supplier<List<List<Point2>>> look) {
    return of(spots, of, look);
  }
}
