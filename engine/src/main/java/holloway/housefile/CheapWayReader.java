package holloway.housefile;

import holloway.house.Along;
import holloway.house.FaceRef;
import holloway.house.Fact;
import holloway.house.Room;
import holloway.house.Side;
import holloway.house.Skirting;
import holloway.house.Soffit;
import holloway.house.Where;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Reads stated lowered ceilings and skirtings that come off, sorted by name. */
final class CheapWayReader {
  private static final Length SKIRTING = Length.mm(100);
  private static final Length LEAST_BOX = Length.mm(50);

  private final List<Soffit> soffits = new ArrayList<>();
  private final List<Skirting> skirtings = new ArrayList<>();
  private final Map<String, Where> names = new TreeMap<>();
  private final Map<String, Where> lowered = new TreeMap<>();
  private final Map<String, Where> skirted = new TreeMap<>();

  CheapWayReader(Entry house) {
    for (Marked item : house.items("hollows")) {
      of(item, CheapWayTables.SOFFIT, house).ifPresent(this::soffit);
      of(item, CheapWayTables.DROPPED_CEILING, house).ifPresent(this::dropped);
      of(item, CheapWayTables.SKIRTING, house).ifPresent(this::skirting);
    }
    soffits.sort(Comparator.comparing(Soffit::name));
    skirtings.sort(Comparator.comparing(Skirting::room));
  }

  List<Soffit> soffits() {
    return soffits;
  }

  List<Skirting> skirtings() {
    return skirtings;
  }

  private static Optional<Entry> of(Marked item, Table table, Entry house) {
    return ((Shape.OneMapOf) OuterTables.HOLLOW)
        .find(item)
        .filter(t -> t == table)
        .flatMap(t -> Entry.of(item, t, house.desk()));
  }

  private void soffit(Entry e) {
    e.text("soffit").ifPresent(n -> Unique.claim(e, "soffit", n, names, "soffit"));
    Optional<FaceRef> face = e.face("along");
    Optional<Along> from = e.along("from");
    Optional<Room.Size> size = e.size("size");
    face.ifPresent(f -> from.ifPresent(a -> Spots.fits(e, "from", f, a)));
    size.filter(CheapWayReader::tooSmall)
        .ifPresent(
            s ->
                e.problem(
                    "size",
                    "size: 300 mm x 250 mm",
                    "",
                    "a soffit is measured out from the wall and down from the ceiling;"
                        + " under 50 mm either way nothing lies in it"));
    if (face.isPresent() && size.isPresent() && e.text("soffit").isPresent()) {
      soffits.add(
          new Soffit(
              e.text("soffit").get(),
              face.get().room(),
              face,
              from,
              e.length("length"),
              Optional.of(size.get().eastWest()),
              size.get().northSouth(),
              cover(e),
              e.where()));
    }
  }

  private static boolean tooSmall(Room.Size s) {
    return s.eastWest().value().compareTo(LEAST_BOX) < 0
        || s.northSouth().value().compareTo(LEAST_BOX) < 0;
  }

  private void dropped(Entry e) {
    e.text("dropped-ceiling")
        .ifPresent(n -> Unique.claim(e, "dropped-ceiling", n, names, "soffit"));
    Optional<String> room = e.text("in");
    room.ifPresent(r -> Unique.claim(e, "in", r, lowered, "dropped ceiling of"));
    Optional<Fact<Length>> drop = e.length("drop");
    if (room.isPresent() && drop.isPresent() && e.text("dropped-ceiling").isPresent()) {
      soffits.add(
          new Soffit(
              e.text("dropped-ceiling").get(),
              room.get(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              drop.get(),
              cover(e),
              e.where()));
    }
  }

  private static Soffit.Cover cover(Entry e) {
    return e.choice("cover", Soffit.Cover.class).orElse(Soffit.Cover.BOARD);
  }

  private void skirting(Entry e) {
    e.text("skirting")
        .ifPresent(
            room -> {
              Unique.claim(e, "skirting", room, skirted, "skirting of");
              List<Side> sides = new ArrayList<>();
              e.texts("sides")
                  .forEach(s -> Entry.choiceOf(s.text(), Side.class).ifPresent(sides::add));
              skirtings.add(
                  new Skirting(
                      room,
                      e.has("sides") ? sides.stream().distinct().sorted().toList() : all(),
                      e.length("height").orElse(Fact.assumed(SKIRTING)),
                      e.where()));
            });
  }

  private static List<Side> all() {
    return List.of(Side.values());
  }
}
