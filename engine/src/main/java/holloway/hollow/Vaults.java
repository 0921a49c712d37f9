package holloway.hollow;

import holloway.survey.Placed;
import holloway.survey.Wall;
import java.util.Optional;

/** Walls under a vaulted ceiling. */
final class Vaults {
  private Vaults() {}

  /** A room with a vaulted ceiling that this wall shows to. */
  static Optional<String> over(Wall wall, Placed placed) {
    return wall.faces().stream()
        .map(f -> f.room())
        .filter(r -> placed.getRoom(r).room().vaulted())
        .findFirst();
  }

  static String noAttic(String room) {
    return "the ceiling of the " + room + " is vaulted: no attic lies over this wall";
  }
}
