package holloway.housefile;

import holloway.house.Along;
import holloway.house.Chase;
import holloway.house.Conduit;
import holloway.house.FaceRef;
import holloway.house.Fact;
import holloway.house.Room;
import holloway.house.WallSpot;
import holloway.house.Where;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Reads stated chases and conduits, sorted by name. */
final class HollowReader {
  private final List<Chase> chases = new ArrayList<>();
  private final List<Conduit> conduits = new ArrayList<>();

  HollowReader(Entry house) {
    Desk desk = house.desk();
    Map<String, Where> names = new TreeMap<>();
    for (Marked item : house.items("hollows")) {
      if (item instanceof Marked.Mapping m && m.values().containsKey("chase")) {
        Entry e = new Entry(m, OuterTables.CHASE, desk);
        e.text("chase").ifPresent(n -> Unique.claim(e, "chase", n, names, "hollow"));
        chase(e).ifPresent(chases::add);
      } else if (item instanceof Marked.Mapping m && m.values().containsKey("conduit")) {
        Entry e = new Entry(m, OuterTables.CONDUIT, desk);
        e.text("conduit").ifPresent(n -> Unique.claim(e, "conduit", n, names, "hollow"));
        conduit(e).ifPresent(conduits::add);
      } else if (item instanceof Marked.Mapping m && m.values().containsKey("outdoor-link")) {
        Entry e = new Entry(m, OuterTables.OUTDOOR_LINK, desk);
        e.text("outdoor-link").ifPresent(n -> Unique.claim(e, "outdoor-link", n, names, "hollow"));
        OutdoorLinkReader.read(e).ifPresent(conduits::add);
      } else if (item instanceof Marked.Mapping m && m.values().containsKey("old-cable")) {
        Entry e = new Entry(m, CheapWayTables.OLD_CABLE, desk);
        e.text("old-cable").ifPresent(n -> Unique.claim(e, "old-cable", n, names, "hollow"));
        oldCable(e).ifPresent(conduits::add);
      }
    }
    chases.sort(Comparator.comparing(Chase::name));
    conduits.sort(Comparator.comparing(Conduit::name));
  }

  List<Chase> chases() {
    return chases;
  }

  List<Conduit> conduits() {
    return conduits;
  }

  private static Optional<Chase> chase(Entry e) {
    Optional<FaceRef> beside = e.face("beside");
    Optional<Along> along = e.along("along");
    Optional<Room.Size> size = e.size("size");
    beside.ifPresent(f -> along.ifPresent(a -> Spots.fits(e, "along", f, a)));
    if (beside.isEmpty()
        || size.isEmpty()
        || e.text("chase").isEmpty()
        || e.text("from").isEmpty()
        || e.text("to").isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Chase(
            e.text("chase").get(),
            beside.get(),
            along,
            e.yesNo("inside").orElse(false),
            e.text("from").get(),
            e.text("to").get(),
            size.get().eastWest(),
            size.get().northSouth(),
            contents(e),
            floors(e),
            e.yesNo("known").orElse(false),
            e.where()));
  }

  private static List<Chase.Contents> contents(Entry e) {
    List<Chase.Contents> out = new ArrayList<>();
    for (Marked.Scalar s : e.texts("contents")) {
      Entry.choiceOf(s.text(), Chase.Contents.class).ifPresent(out::add);
    }
    out.sort(Comparator.naturalOrder());
    return out.stream().distinct().toList();
  }

  private static Map<String, Fact<Chase.FloorPass>> floors(Entry e) {
    Map<String, Fact<Chase.FloorPass>> out = new TreeMap<>();
    if (e.raw("floors").orElse(null) instanceof Marked.Mapping m) {
      m.values()
          .forEach(
              (level, v) -> {
                checkFloor(e, m, level);
                if (v instanceof Marked.Scalar s) {
                  Entry.choiceOf(s.text(), Chase.FloorPass.class)
                      .ifPresent(pass -> out.put(level, Fact.stated(pass, s.where())));
                }
              });
    }
    return out;
  }

  private static void checkFloor(Entry e, Marked.Mapping floors, String level) {
    try {
      Names.known(level, Names.and(e.desk().names().levels(), "attic"), "level");
    } catch (Refused r) {
      e.desk().problems().add(floors.keys().get(level), level, r);
    }
  }

  private static Optional<Conduit> conduit(Entry e) {
    Optional<WallSpot> from = end(e, "from");
    Optional<WallSpot> to = end(e, "to");
    Optional<Fact<Length>> inside = e.length("inside-diameter");
    Optional<Fact<Length>> length = TubeReader.length(e);
    if (from.isEmpty() || to.isEmpty() || inside.isEmpty() || length.isEmpty()) {
      return Optional.empty();
    }
    return e.text("conduit")
        .map(
            name ->
                new Conduit(
                        name,
                        from.get(),
                        to.get(),
                        inside.get().value(),
                        2,
                        length.get(),
                        Conduit.Kind.TUBE,
                        e.where())
                    .with(TubeReader.way(e, length.get().value())));
  }

  private static Optional<Conduit> oldCable(Entry e) {
    Optional<WallSpot> from = end(e, "from");
    Optional<WallSpot> to = end(e, "to");
    Optional<Fact<Length>> hole = e.length("hole");
    Optional<Fact<Length>> length = e.length("length");
    if (from.isEmpty() || to.isEmpty() || hole.isEmpty() || length.isEmpty()) {
      return Optional.empty();
    }
    boolean loose = e.yesNo("stapled").map(stapled -> !stapled).orElse(false);
    return e.text("old-cable")
        .map(
            name ->
                new Conduit(
                    name,
                    from.get(),
                    to.get(),
                    hole.get().value(),
                    0,
                    length.get(),
                    loose ? Conduit.Kind.LOOSE_CABLE : Conduit.Kind.FAST_CABLE,
                    e.where()));
  }

  static Optional<WallSpot> end(Entry e, String key) {
    return e.map(key, OuterTables.WALL_SPOT)
        .flatMap(m -> Spots.onWall(m, Fact.assumed(Length.ZERO)));
  }
}
