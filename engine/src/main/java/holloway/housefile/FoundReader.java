package holloway.housefile;

import holloway.house.Along;
import holloway.house.FaceRef;
import holloway.house.Fact;
import holloway.house.Found;
import holloway.house.Origin;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BiFunction;

/** Reads what the work uncovered. */
final class FoundReader {
  private final Entry file;
  private final List<Found> out = new ArrayList<>();

  FoundReader(Entry file) {
    this.file = file;
  }

  List<Found> read() {
    for (Entry e : file.maps("studs", WantedTables.FOUND_STUD)) {
      onFace(e, (face, along) -> new Found.Stud(face, along, e.where()));
    }
    for (Entry e : file.maps("blocks", WantedTables.FOUND_BLOCK)) {
      e.length("height")
          .ifPresent(
              h -> onFace(e, (face, along) -> new Found.Block(face, along, found(h), e.where())));
    }
    for (Entry e : file.maps("clear-bays", WantedTables.FOUND_CLEAR)) {
      onFace(e, (face, along) -> new Found.ClearBay(face, along, e.where()));
    }
    for (Entry e : file.maps("notches", WantedTables.FOUND_NOTCH)) {
      new NotchReader(e).read().ifPresent(out::add);
    }
    Map<String, holloway.house.Where> ids = new TreeMap<>();
    for (Entry e : file.maps("holes", WantedTables.FOUND_HOLE)) {
      Optional<String> id = e.text("id");
      id.ifPresent(i -> Unique.claim(e, "id", i, ids, "hole"));
      e.length("diameter")
          .ifPresent(
              d ->
                  id.ifPresent(
                      i ->
                          out.add(
                              new Found.HoleMade(
                                  i, d.value(), e.whole("cables").orElse(0), e.where()))));
    }
    return out;
  }

  private void onFace(Entry e, BiFunction<FaceRef, Along, Found> make) {
    Optional<FaceRef> face = e.face("side");
    Optional<Along> along = e.along("from");
    if (face.isPresent() && along.isPresent() && Spots.fits(e, "from", face.get(), along.get())) {
      out.add(make.apply(face.get(), new Along(along.get().from(), found(along.get().distance()))));
    }
  }

  static <T> Fact<T> found(Fact<T> f) {
    return new Fact<>(f.value(), f.spread(), Origin.FOUND, f.where());
  }
}
