package holloway.survey;

import holloway.house.Direction;
import holloway.house.FloorSpec;
import holloway.house.House;
import holloway.house.Level;
import holloway.house.Roof;
import java.util.List;
import java.util.Optional;

/** Which way the joists or rafters run that the walls of a storey carry. */
final class Carried {
  private Carried() {}

  /** Of the floor above, else of the first roof over it, else of its own floor. */
  static Optional<Direction> over(
      House house, Level level, Optional<Level> above, List<PlacedRoom> rooms) {
    return above
        .flatMap(a -> run(a.floor()))
        .or(
            () ->
                house.roofs().stream()
                    .filter(r -> covers(r, level, rooms))
                    .map(Carried::run)
                    .findFirst())
        .or(() -> run(level.floor()));
  }

  private static Optional<Direction> run(FloorSpec f) {
    return f.kind() == FloorSpec.Kind.JOISTS ? Optional.of(f.run()) : Optional.empty();
  }

  private static boolean covers(Roof r, Level level, List<PlacedRoom> rooms) {
    return r.level().filter(level.name()::equals).isPresent()
        || rooms.stream().anyMatch(p -> r.rooms().contains(p.name()));
  }

  private static Direction run(Roof r) {
    if (r.shape() == Roof.Shape.SHED) {
      boolean low = r.lowSide().map(s -> s.runsEastWest()).orElse(true);
      return low ? Direction.NORTH_SOUTH : Direction.EAST_WEST;
    }
    return r.run().orElse(r.ridge().across());
  }
}
