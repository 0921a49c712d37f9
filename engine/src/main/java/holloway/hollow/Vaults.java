package holloway.hollow;

import holloway.geometry.Interval;
import holloway.survey.Placed;
import holloway.survey.Wall;
import java.util.Optional;

/** Walls under a vaulted ceiling. */
final class Vaults {
  private Vaults() {}

  /**
   * A room with a vaulted ceiling that this stretch of the wall shows to, or the corner beside it:
   * also the attic of the roof beside it gives no hand over that wall.
   */
  static Optional<String> beside(Wall wall, Interval along, Placed placed) {
    long by = wall.thickness();
    return wall.faces().stream()
        .filter(f -> f.s().lo() - by < along.hi() && along.lo() < f.s().hi() + by)
        .map(f -> f.room())
        .filter(r -> placed.getRoom(r).room().vaulted())
        .findFirst();
  }

  static String noAttic(String room) {
    return "the ceiling of the " + room + " is vaulted: no attic lies over this wall";
  }
}
