package holloway.housefile;

import holloway.house.Along;
import holloway.house.Beam;
import holloway.house.Direction;
import holloway.house.Fact;
import holloway.house.Where;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Reads beams that cross rooms, sorted by name. */
final class BeamReader {
  private BeamReader() {}

  static List<Beam> read(Entry house) {
    List<Beam> out = new ArrayList<>();
    Map<String, Where> names = new TreeMap<>();
    for (Entry e : house.maps("beams", OuterTables.BEAM)) {
      e.text("beam").ifPresent(n -> Unique.claim(e, "beam", n, names, "beam"));
      beam(e).ifPresent(out::add);
    }
    out.sort(Comparator.comparing(Beam::name));
    return out;
  }

  private static Optional<Beam> beam(Entry e) {
    Optional<String> name = e.text("beam");
    Optional<String> room = e.text("in");
    Optional<Direction> run = e.choice("run", Direction.class);
    Optional<Along> from = e.along("from");
    Optional<Fact<Length>> width = e.length("width");
    if (name.isEmpty() || room.isEmpty() || run.isEmpty() || from.isEmpty() || width.isEmpty()) {
      return Optional.empty();
    }
    boolean fromEnd = from.get().from().runsEastWest() != (run.get() == Direction.EAST_WEST);
    if (fromEnd) {
      e.problem(
          "from",
          run.get() == Direction.EAST_WEST ? "south 6 ft" : "west 6 ft",
          "",
          "a beam that runs %s is taped from a side beside it, not from one it ends at"
              .formatted(Shape.word(run.get())));
    }
    Fact<Length> drop = e.length("drop").orElse(Fact.assumed(Length.ZERO));
    Fact<Length> depth = e.length("depth").orElse(drop);
    checkDepth(e, drop, depth);
    return Optional.of(
        new Beam(
            name.get(),
            room.get(),
            run.get(),
            from.get(),
            width.get(),
            drop,
            depth,
            e.choice("made", Beam.Made.class).orElse(Beam.Made.TIMBER),
            e.where()));
  }

  private static void checkDepth(Entry e, Fact<Length> drop, Fact<Length> depth) {
    if (depth.value().nm() == 0) {
      e.problem(
          "depth",
          "drop: 8 in, or depth: 9-1/4 in",
          "",
          "a beam hangs below the ceiling (drop) or says how deep it is (depth)");
    } else if (depth.value().compareTo(drop.value()) < 0) {
      e.problem(
          "depth",
          "at least " + drop.value(),
          "",
          "a beam that hangs %s below the ceiling is not only %s deep"
              .formatted(drop.value(), depth.value()));
    }
  }
}
