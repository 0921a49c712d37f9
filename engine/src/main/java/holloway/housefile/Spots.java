package holloway.housefile;

import holloway.house.Along;
import holloway.house.CeilingSpot;
import holloway.house.FaceRef;
import holloway.house.Fact;
import holloway.house.Side;
import holloway.house.WallRef;
import holloway.house.WallSpot;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads where things are: on a face, on a ceiling, in a wall. */
final class Spots {
  private Spots() {}

  /** {@code in}, {@code wall}, {@code from}, {@code height} of one map. */
  static Optional<WallSpot> onWall(Entry e, Fact<Length> heightUnlessSaid) {
    Optional<FaceRef> face = wallOf(e);
    Optional<Along> along = e.along("from");
    if (face.isEmpty() || along.isEmpty()) {
      return Optional.empty();
    }
    fits(e, "from", face.get(), along.get());
    Fact<Length> height = e.length("height").orElse(heightUnlessSaid);
    return Optional.of(new WallSpot(face.get(), along.get(), height));
  }

  /** The face named by {@code in} and {@code wall}. */
  static Optional<FaceRef> wallOf(Entry e) {
    return e.text("in")
        .flatMap(room -> e.parsed("wall", s -> Forms.sideOf(room, s.text(), s.where())));
  }

  /** A wall is taped from one of its two ends; says so when the other pair of sides is named. */
  static boolean fits(Entry e, String key, FaceRef face, Along along) {
    if (face.side().runsEastWest() != along.from().runsEastWest()) {
      return true;
    }
    String ends = face.side().runsEastWest() ? "west or east" : "south or north";
    e.problem(
        key,
        "a distance from its " + ends + " end",
        "",
        "the %s wall of '%s' runs %s; tape from its %s end"
            .formatted(
                face.side().word(),
                face.room(),
                face.side().runsEastWest() ? "east-west" : "north-south",
                ends));
    return false;
  }

  /** Empty when absent or reported. */
  static Optional<CeilingSpot> onCeiling(Entry e, String key, String room) {
    List<Along> parsed = new ArrayList<>();
    int written = 0;
    Marked raw = e.raw(key).orElse(null);
    if (raw instanceof Marked.Sequence list) {
      written = list.items().size() == 2 ? 2 : -1;
      for (Marked item : list.items()) {
        if (item instanceof Marked.Scalar s) {
          Entry.quietly(() -> Forms.along(s.text(), s.where())).ifPresent(parsed::add);
        }
      }
    } else if (raw instanceof Marked.Mapping m) {
      written = m.values().size();
      Entry map = e.map(key, HouseTables.CORNER_SPOT).orElseThrow();
      for (Side side : Side.values()) {
        map.length(side.word()).ifPresent(d -> parsed.add(new Along(side, d)));
      }
    }
    boolean told = raw == null || raw instanceof Marked.Scalar || parsed.size() != written;
    return told ? Optional.empty() : corner(e, key, room, parsed);
  }

  private static Optional<CeilingSpot> corner(Entry e, String key, String room, List<Along> two) {
    Optional<Along> eastWest = only(two, false);
    Optional<Along> northSouth = only(two, true);
    if (two.size() == 2 && eastWest.isPresent() && northSouth.isPresent()) {
      return Optional.of(new CeilingSpot(room, eastWest.get(), northSouth.get(), e.where(key)));
    }
    e.problem(
        key,
        "[west 4 ft, north 5 ft]",
        "",
        "a spot is taped from two sides: one of west and east, and one of south and north");
    return Optional.empty();
  }

  private static Optional<Along> only(List<Along> all, boolean northSouth) {
    return all.stream().filter(a -> a.from().runsEastWest() == northSouth).findFirst();
  }

  /** {@code between} two rooms, or {@code side}; exactly one of them. */
  static Optional<WallRef> wallRef(Entry e, String thing) {
    if (e.has("between") == e.has("side")) {
      e.problem(
          e.has("side") ? "side" : "between",
          "between: [garage, kitchen], or side: office east",
          "",
          e.has("side")
              ? thing + " has both 'between' and 'side'; keep one"
              : thing + " does not say which wall it is");
      return Optional.empty();
    }
    if (e.has("side")) {
      return e.face("side").map(f -> new WallRef(Optional.empty(), Optional.of(f), f.where()));
    }
    List<Marked.Scalar> two = e.texts("between");
    if (two.size() != 2) {
      return Optional.empty();
    }
    if (two.get(0).text().equals(two.get(1).text())) {
      e.problem("between", "two different rooms", "", "a wall lies between two different rooms");
      return Optional.empty();
    }
    WallRef.Between between =
        new WallRef.Between(two.get(0).text(), two.get(1).text(), e.whole("number").orElse(1));
    return Optional.of(new WallRef(Optional.of(between), Optional.empty(), e.where("between")));
  }
}
