package holloway.housefile;

import holloway.house.Along;
import holloway.house.CeilingSpot;
import holloway.house.FaceRef;
import holloway.house.Fact;
import holloway.house.Found;
import holloway.house.WallSpot;
import holloway.units.Length;
import java.util.List;
import java.util.Optional;

/** Reads one notch that was found: in a stud, or in a joist over or under a room. */
final class NotchReader {
  private static final String OVER = "above-ceiling-of";
  private static final String UNDER = "below-floor-of";

  private final Entry e;

  NotchReader(Entry e) {
    this.e = e;
  }

  /** Empty when something was wrong and is reported. */
  Optional<Found> read() {
    List<String> places = List.of("side", OVER, UNDER).stream().filter(e::has).toList();
    Optional<Fact<Length>> deep = e.length("depth");
    Optional<Fact<Length>> run = e.length("length");
    if (places.size() != 1) {
      e.problem(
          places.isEmpty() ? "side" : places.get(1),
          "one of: side, " + OVER + ", " + UNDER,
          "",
          "a notch is in one place: a stud of a wall, or a joist over or under a room");
      return Optional.empty();
    }
    Optional<? extends Found.Cut> cut =
        places.get(0).equals("side") ? inStud() : inJoist(places.get(0));
    if (cut.isEmpty() || deep.isEmpty() || run.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Found.Notch(
            cut.get(), FoundReader.found(deep.get()), FoundReader.found(run.get()), e.where()));
  }

  private Optional<Found.InStud> inStud() {
    Optional<FaceRef> face = e.face("side");
    Optional<Along> along = e.along("from");
    Optional<Fact<Length>> height = e.length("height");
    boolean all = has("in a stud", List.of("from", "height"));
    return all
            && face.isPresent()
            && along.isPresent()
            && height.isPresent()
            && Spots.fits(e, "from", face.get(), along.get())
        ? Optional.of(new Found.InStud(new WallSpot(face.get(), along.get(), height.get())))
        : Optional.empty();
  }

  private Optional<Found.InJoist> inJoist(String place) {
    boolean all = has("in a joist", List.of("at", "edge"));
    Optional<CeilingSpot> at = e.text(place).flatMap(room -> Spots.onCeiling(e, "at", room));
    Optional<String> edge = e.text("edge");
    return all && at.isPresent() && edge.isPresent()
        ? Optional.of(new Found.InJoist(at.get(), place.equals(OVER), edge.get().equals("top")))
        : Optional.empty();
  }

  private boolean has(String where, List<String> keys) {
    boolean all = true;
    for (String key : keys) {
      if (!e.has(key)) {
        all = false;
        e.problem(key, key + ": ...", "", "a notch " + where + " lacks '" + key + ":'");
      }
    }
    return all;
  }
}
