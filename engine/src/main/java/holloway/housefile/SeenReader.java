package holloway.housefile;

import holloway.house.Along;
import holloway.house.CeilingSpot;
import holloway.house.FaceRef;
import holloway.house.Fact;
import holloway.house.Obstacle;
import holloway.house.Room;
import holloway.house.Tape;
import holloway.house.Thing;
import holloway.house.WallSpot;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Reads obstacles, things seen in rooms, and extra tapes. */
final class SeenReader {
  private static final List<String> VOIDS =
      Arrays.stream(Obstacle.InVoid.Place.values()).map(SeenReader::key).toList();

  /** Whatever else hangs there, no cable minds it. */
  private static final Set<Obstacle.Kind> HUNG =
      EnumSet.of(Obstacle.Kind.MOTOR, Obstacle.Kind.FLUORESCENT_LIGHT);

  private final Defaults defaults;

  SeenReader(Defaults defaults) {
    this.defaults = defaults;
  }

  /** The key that a place goes by. */
  static String key(Obstacle.InVoid.Place place) {
    return place.name().toLowerCase(Locale.ROOT).replace('_', '-') + "-of";
  }

  List<Obstacle> obstacles(Entry house) {
    List<Obstacle> out = new ArrayList<>();
    for (Entry e : house.maps("obstacles", OuterTables.OBSTACLE)) {
      Optional<Obstacle.Kind> kind = e.kind(Obstacle.Kind.class);
      List<String> places =
          Stream.concat(Stream.of("side"), VOIDS.stream()).filter(e::has).toList();
      if (places.size() != 1) {
        e.problem(
            places.isEmpty() ? "side" : places.get(1),
            "one of: side, " + String.join(", ", VOIDS),
            "",
            "an obstacle lies in one place: in a wall, above or below a ceiling, or below a floor");
      } else if (places.get(0).equals("side")) {
        inWall(e)
            .ifPresent(
                w ->
                    kind.ifPresent(
                        k ->
                            out.add(new Obstacle(k, Optional.of(w), Optional.empty(), e.where()))));
      } else {
        inVoid(e, places.get(0))
            .ifPresent(
                v ->
                    kind.ifPresent(
                        k ->
                            out.add(new Obstacle(k, Optional.empty(), Optional.of(v), e.where()))));
      }
    }
    return out;
  }

  private static boolean hasAll(Entry e, String where, List<String> keys) {
    boolean all = true;
    for (String key : keys) {
      if (!e.has(key)) {
        all = false;
        e.problem(key, key + ": ...", "", "an obstacle " + where + " lacks '" + key + ":'");
      }
    }
    return all;
  }

  private static Optional<Obstacle.InWall> inWall(Entry e) {
    hasAll(e, "in a wall", List.of("from", "width", "bottom", "top"));
    Optional<FaceRef> face = e.face("side");
    Optional<Along> from = e.along("from");
    Optional<Fact<Length>> bottom = e.length("bottom");
    Optional<Fact<Length>> top = e.length("top");
    face.ifPresent(f -> from.ifPresent(a -> Spots.fits(e, "from", f, a)));
    if (face.isEmpty() || from.isEmpty() || bottom.isEmpty() || top.isEmpty()) {
      return Optional.empty();
    }
    if (top.get().value().compareTo(bottom.get().value()) <= 0) {
      e.problem("top", "a top above the bottom", "", "this obstacle's top is not above its bottom");
    }
    return e.length("width")
        .map(w -> new Obstacle.InWall(face.get(), from.get(), w, bottom.get(), top.get()));
  }

  private static Optional<Obstacle.InVoid> inVoid(Entry e, String place) {
    boolean pier = e.kind(Obstacle.Kind.class).filter(k -> k == Obstacle.Kind.PIER).isPresent();
    if (pier && e.has("height")) {
      e.problem("height", "", "", "a pier goes from the ground to the joists; leave 'height' out");
    }
    if (pier && !place.equals("below-floor-of")) {
      e.problem(place, "below-floor-of: den", "", "a pier stands in a crawlspace, below a floor");
    }
    if (place.equals(key(Obstacle.InVoid.Place.BELOW_CEILING))
        && e.kind(Obstacle.Kind.class).filter(k -> !HUNG.contains(k)).isPresent()) {
      e.problem(
          place,
          "fluorescent-light or motor",
          "",
          "below a ceiling only what disturbs cable near it is stated");
    }
    hasAll(e, "in a void", pier ? List.of("at", "size") : List.of("at", "size", "height"));
    Optional<CeilingSpot> at = e.text(place).flatMap(room -> Spots.onCeiling(e, "at", room));
    Optional<Room.Size> size = e.size("size");
    Optional<Fact<Length>> height =
        pier ? Optional.of(Fact.stated(Length.ZERO, e.where())) : e.length("height");
    if (at.isEmpty() || size.isEmpty() || height.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Obstacle.InVoid(
            at.get(),
            Obstacle.InVoid.Place.values()[VOIDS.indexOf(place)],
            size.get().eastWest().value(),
            size.get().northSouth().value(),
            height.get().value()));
  }

  List<Thing> things(Entry house) {
    List<Thing> out = new ArrayList<>();
    for (Entry e : house.maps("things", OuterTables.THING)) {
      Optional<Thing.Kind> kind = e.kind(Thing.Kind.class);
      if (kind.isPresent()) {
        ThingSize usual =
            ThingSize.of(kind.get(), () -> defaults.heightUnlessSaid(e, "boxes seen"));
        Optional<WallSpot> at = Spots.onWall(e, usual.centre());
        at.ifPresent(
            spot ->
                out.add(
                    new Thing(
                        kind.get(),
                        spot,
                        e.length("width").map(Fact::value).orElse(usual.width()),
                        e.length("top").map(Fact::value).orElse(usual.topOver(spot)),
                        e.where())));
      }
    }
    return out;
  }

  List<Tape> tapes(Entry house) {
    List<Tape> out = new ArrayList<>();
    for (Entry e : house.maps("measures", OuterTables.MEASURE)) {
      Optional<FaceRef> from = e.face("from");
      Optional<FaceRef> to = e.face("to");
      if (from.isPresent() && to.isPresent()) {
        if (from.get().side().runsEastWest() != to.get().side().runsEastWest()) {
          e.problem(
              "to",
              "two faces that both look north or south, or both east or west",
              "",
              "no tape runs straight from '%s' to '%s'".formatted(from.get(), to.get()));
        }
        e.length("distance").ifPresent(d -> out.add(new Tape(from.get(), to.get(), d, e.where())));
      }
    }
    return out;
  }
}
