package holloway.housefile;

import holloway.house.CeilingSpot;
import holloway.house.Room;
import holloway.house.Side;
import holloway.house.Stair;
import holloway.house.Where;
import holloway.units.Length;
import holloway.units.LengthText;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Reads flights of stairs, sorted by name. */
final class StairReader {
  /** No flight between two storeys is shorter, nor narrower; from experience. */
  private static final Length SHORTEST = Length.mm(1_000);

  private static final Length NARROWEST = Length.mm(500);

  private StairReader() {}

  static List<Stair> read(Entry house) {
    List<Stair> out = new ArrayList<>();
    Map<String, Where> names = new TreeMap<>();
    for (Entry e : house.maps("stairs", OuterTables.STAIR)) {
      e.text("stair").ifPresent(n -> Unique.claim(e, "stair", n, names, "stair"));
      stair(e).ifPresent(out::add);
    }
    out.sort(Comparator.comparing(Stair::name));
    return out;
  }

  private static Optional<Stair> stair(Entry e) {
    Optional<String> name = e.text("stair");
    Optional<CeilingSpot> near = e.text("in").flatMap(room -> Spots.onCeiling(e, "from", room));
    Optional<Room.Size> size = e.size("size");
    Optional<Side> climbs = e.choice("climbs", Side.class);
    if (name.isEmpty() || near.isEmpty() || size.isEmpty() || climbs.isEmpty()) {
      return Optional.empty();
    }
    check(e, size.get(), climbs.get());
    Stair.Under under = e.choice("under", Stair.Under.class).orElse(Stair.Under.CLOSED);
    return Optional.of(
        new Stair(name.get(), near.get(), size.get(), climbs.get(), under, e.where()));
  }

  private static void check(Entry e, Room.Size size, Side climbs) {
    boolean ns = climbs.runsEastWest();
    Length along = (ns ? size.northSouth() : size.eastWest()).value();
    Length across = (ns ? size.eastWest() : size.northSouth()).value();
    if (along.compareTo(SHORTEST) < 0) {
      e.problem(
          "size",
          "at least " + LengthText.metric(SHORTEST) + (ns ? " north-south" : " east-west"),
          "",
          "a flight that climbs %s is %s long in plan: too short for stairs"
              .formatted(climbs.word(), LengthText.metric(along)));
    } else if (across.compareTo(NARROWEST) < 0) {
      e.problem(
          "size",
          "at least " + LengthText.metric(NARROWEST) + (ns ? " east-west" : " north-south"),
          "",
          "a flight that climbs %s is %s wide: too narrow for stairs"
              .formatted(climbs.word(), LengthText.metric(across)));
    }
  }
}
