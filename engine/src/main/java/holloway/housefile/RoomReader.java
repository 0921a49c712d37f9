package holloway.housefile;

import holloway.house.Fact;
import holloway.house.Lining;
import holloway.house.Overhead;
import holloway.house.Room;
import holloway.house.Standing;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the rooms, sorted by name. */
final class RoomReader {
  /** Less than this is a slip of the unit (12 in for 12 ft), not a room. */
  private static final Length LEAST = Length.mm(400);

  private final Defaults defaults;

  RoomReader(Defaults defaults) {
    this.defaults = defaults;
  }

  List<Room> read(Entry house) {
    Map<String, Entry> named = house.named("rooms", HouseTables.ROOM_TABLE);
    if (named.isEmpty() && house.has("rooms")) {
      house.problem("rooms", "rooms: { garage: { ... } }", "", "a house needs at least one room");
    }
    List<Room> rooms = new ArrayList<>();
    named.forEach((name, e) -> room(name, e).ifPresent(rooms::add));
    PlacingCheck.check(rooms, named, house);
    return rooms;
  }

  private Optional<Room> room(String name, Entry e) {
    Optional<Room.Size> size = e.size("size");
    List<Room.Corner> outline = outline(e);
    checkShape(name, e, size);
    Optional<Room.Placing> placing = new PlacingReader(name, e).read();
    if (placing.isEmpty() || e.text("level").isEmpty()) {
      return Optional.empty();
    }
    boolean garage = e.yesNo("garage").orElse(false);
    boolean vaulted = OverheadReader.isVaulted(e);
    Overhead overhead = OverheadReader.read(e);
    Lining ceiling =
        OverheadReader.shows(e, overhead).orElseGet(() -> defaults.ceilingLining(name));
    OverheadReader.checkStraps(e, overhead, ceiling, vaulted);
    return Optional.of(
        new Room(
            name,
            e.text("level").get(),
            size,
            outline,
            placing.get(),
            FloorReader.read(e, defaults, "floor of " + name),
            e.length("elevation"),
            e.length("ceiling-height"),
            e.choice("finish", Lining.class).orElseGet(() -> defaults.wallLining(name)),
            ceiling,
            overhead,
            e.yesNo("plain").orElse(garage),
            garage,
            vaulted,
            standing(e),
            e.where()));
  }

  /** Somebody else's beats not surveyed: it forbids more. */
  private static Standing standing(Entry e) {
    if (!e.yesNo("ours").orElse(true)) {
      return Standing.SOMEBODY_ELSES;
    }
    return e.yesNo("surveyed").orElse(true) ? Standing.OURS : Standing.NOT_SURVEYED;
  }

  private static void checkShape(String name, Entry e, Optional<Room.Size> size) {
    if (e.has("size") == e.has("outline")) {
      e.problem(
          e.has("outline") ? "outline" : "size",
          "size: 12 ft 6 in x 10 ft, or outline: [[0 ft, 0 ft], [9 ft, 0 ft], [9 ft, 4 ft], ...]",
          "",
          e.has("outline")
              ? "room '" + name + "' has both size and outline; keep one"
              : "room '" + name + "' has neither size nor outline");
    }
    for (Fact<Length> side :
        size.map(s -> List.of(s.eastWest(), s.northSouth())).orElse(List.of())) {
      if (side.value().compareTo(LEAST) < 0) {
        e.problem(
            "size",
            Form.SIZE.expected(),
            "",
            "room '%s' would be only %s wide; is a unit wrong?".formatted(name, side.value()));
      }
    }
  }

  private static List<Room.Corner> outline(Entry e) {
    List<Room.Corner> corners = new ArrayList<>();
    for (Marked item : e.items("outline")) {
      corner(item).ifPresent(corners::add);
    }
    if (corners.size() == e.items("outline").size() && !corners.isEmpty()) {
      OutlineCheck.check(e, corners);
    }
    return corners;
  }

  static Optional<Room.Corner> corner(Marked item) {
    if (!(item instanceof Marked.Sequence s) || s.items().size() != 2) {
      return Optional.empty();
    }
    List<Fact<Length>> two = new ArrayList<>();
    Shape.Len any = (Shape.Len) Shape.SIGNED;
    for (Marked v : s.items()) {
      if (v instanceof Marked.Scalar t && !t.isNothing()) {
        Entry.quietly(() -> Forms.length(t.text(), any.least(), any.most(), t.where()))
            .ifPresent(two::add);
      }
    }
    return two.size() == 2
        ? Optional.of(new Room.Corner(two.get(0), two.get(1)))
        : Optional.empty();
  }
}
