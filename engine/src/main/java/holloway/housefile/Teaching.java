package holloway.housefile;

import java.util.Map;
import java.util.Optional;

/** A line to copy for each key that a newcomer is likely to have left out. */
final class Teaching {
  private static final Map<String, String> EXAMPLES =
      Map.of(
          "house.house", "house: Alder Lane",
          "house.place", "place: us (or uk, or none)",
          "house.levels", "levels: { ground: { floor: slab, ceiling-height: 8 ft 1 in } }",
          "house.rooms", "rooms: { garage: { level: ground, size: 21 ft 4 in x 22 ft } }",
          "house.cabinet", "cabinet: { in: garage, wall: east, from: south 4 ft, height: 5 ft }",
          "house.outlets",
              "outlets: [{ name: desk, in: office, wall: south, from: west 3 ft, height: 16 in,"
                  + " cables: [cat6] }]",
          "level.floor", "floor: slab, or floor: { joists: 2x10, every: 16 in, run: east-west }",
          "floor.run", "run: east-west, or run: north-south (look in the attic, cellar or hatch)");

  private Teaching() {}

  static Optional<String> example(Table table, Table.Key key) {
    return Optional.ofNullable(EXAMPLES.get(table.name() + "." + key.name()));
  }
}
