package holloway.housefile;

import holloway.house.Room;
import holloway.house.Room.Placing;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** Whether the rooms hang together: one start, no rings, neighbours on the right level. */
final class PlacingCheck {
  private PlacingCheck() {}

  /** {@code named} are all the rooms' maps, {@code rooms} those that read well. */
  static void check(List<Room> rooms, Map<String, Entry> named, Entry house) {
    boolean split =
        house.named("levels", HouseTables.LEVEL_TABLE).values().stream()
            .anyMatch(l -> l.text("beside").isPresent());
    Map<String, Room> byName = new TreeMap<>();
    rooms.forEach(r -> byName.put(r.name(), r));
    List<Room> free = rooms.stream().filter(r -> r.placing() instanceof Placing.Free).toList();
    boolean whole = rooms.size() == house.desk().names().rooms().size();
    if (free.isEmpty() && whole && !rooms.isEmpty()) {
      house.problem(
          "rooms",
          "one room without east-of, west-of, north-of, south-of, above, below or at",
          "",
          "no room starts the survey: leave the first room unplaced");
    }
    if (free.size() > 1) {
      reportUnplaced(free, named);
    }
    for (Room r : rooms) {
      checkLevels(r, byName, named.get(r.name()), split);
    }
    if (whole) {
      Set<String> led = new HashSet<>();
      rooms.forEach(r -> checkRing(r, byName, led, named));
    }
  }

  private static void reportUnplaced(List<Room> free, Map<String, Entry> named) {
    String names = Names.list(free.stream().map(Room::name).toList());
    for (Room r : free) {
      Entry e = named.get(r.name());
      e.desk()
          .problems()
          .add(
              e.where(),
              r.name(),
              "east-of, west-of, north-of, south-of, above, below or at",
              "",
              "only one room may be unplaced (it starts the survey), but these are: %s; say which"
                      .formatted(names)
                  + " room '"
                  + r.name()
                  + "' lies beside, or leave that to it alone; 'apart: yes' if it stands in another"
                  + " building and nobody taped how far off");
    }
  }

  static Optional<String> neighbour(Room r) {
    if (r.placing() instanceof Placing.Beside b) {
      return Optional.of(b.neighbour());
    }
    return r.placing() instanceof Placing.Stacked s ? Optional.of(s.neighbour()) : Optional.empty();
  }

  private static void checkLevels(Room r, Map<String, Room> rooms, Entry e, boolean split) {
    Room n = neighbour(r).map(rooms::get).orElse(null);
    if (n == null) {
      return;
    }
    boolean same = n.level().equals(r.level());
    if (r.placing() instanceof Placing.Beside && !same && !split) {
      e.problem(
          "level",
          "above or below for a room of another level (or beside: and step: of a split level)",
          "",
          "room '%s' is on level '%s' but its neighbour '%s' is on '%s'"
              .formatted(r.name(), r.level(), n.name(), n.level()));
    } else if (r.placing() instanceof Placing.Stacked && same) {
      e.problem(
          "level",
          "another level, or east-of, west-of, north-of, south-of",
          "",
          "room '%s' cannot lie over or under '%s': both are on level '%s'"
              .formatted(r.name(), n.name(), r.level()));
    }
  }

  /** Follows the neighbours to the first room, or to one that is known to lead there. */
  private static void checkRing(
      Room start, Map<String, Room> rooms, Set<String> led, Map<String, Entry> named) {
    List<String> path = new ArrayList<>();
    Set<String> met = new HashSet<>();
    Room at = start;
    while (at != null && !led.contains(at.name()) && met.add(at.name())) {
      path.add(at.name());
      at = neighbour(at).map(rooms::get).orElse(null);
    }
    if (at != null && !led.contains(at.name())) {
      List<String> ring = path.subList(path.indexOf(at.name()), path.size());
      String first = Collections.min(ring);
      Entry e = named.get(first);
      String text = "these rooms are placed by one another in a ring: " + Names.list(ring);
      e.desk().problems().add(e.where(), first, "rooms that lead to the first one", "", text);
    }
    led.addAll(path);
  }
}
