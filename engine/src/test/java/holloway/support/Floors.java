package holloway.support;

import holloway.house.Direction;
import holloway.house.Fact;
import holloway.house.Fill;
import holloway.house.FloorSpec;
import holloway.house.Timber;
import holloway.house.Where;
import holloway.units.Length;
import java.util.Optional;

/** Floors for test houses. */
final class Floors {
  private Floors() {}

  static FloorSpec slab(Where where) {
    return floor(FloorSpec.Kind.SLAB, Optional.empty(), Direction.EAST_WEST, where);
  }

  /** A stated section at 16 in. */
  static FloorSpec joists(Timber section, Direction run, Where where) {
    return floor(FloorSpec.Kind.JOISTS, Optional.of(Fact.stated(section, where)), run, where);
  }

  private static FloorSpec floor(
      FloorSpec.Kind kind, Optional<Fact<Timber>> joists, Direction run, Where where) {
    return new FloorSpec(
        kind,
        joists,
        Fact.stated(Length.inches(16), where),
        run,
        Optional.empty(),
        Optional.empty(),
        false,
        Fill.EMPTY,
        where);
  }
}
