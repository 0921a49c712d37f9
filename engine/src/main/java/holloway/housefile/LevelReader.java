package holloway.housefile;

import holloway.house.Fact;
import holloway.house.Level;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Reads the storeys, sorted by name. */
final class LevelReader {
  private LevelReader() {}

  static List<Level> read(Entry house, Defaults defaults) {
    Map<String, Entry> named = house.named("levels", HouseTables.LEVEL_TABLE);
    if (named.isEmpty() && house.has("levels")) {
      house.problem(
          "levels", "levels: { ground: { floor: slab } }", "", "a house needs at least one level");
    }
    named.forEach((name, e) -> check(name, e, named));
    checkUse(house, named);
    List<Level> levels = new ArrayList<>();
    named.forEach(
        (name, e) -> {
          FloorReader.read(e, defaults, "level " + name)
              .ifPresent(
                  floor ->
                      levels.add(
                          new Level(
                              name,
                              floor,
                              e.length("ceiling-height")
                                  .orElseGet(() -> defaults.ceilingHeight(name)),
                              e.text("above"),
                              e.length("rise"),
                              e.where(),
                              WallReader.ofLevel(e, "outer-walls"),
                              WallReader.ofLevel(e, "inner-walls"),
                              beside(name, e))));
        });
    return levels;
  }

  /** Neither says anything without the other. */
  private static Optional<Level.Beside> beside(String name, Entry e) {
    Optional<String> other = e.text("beside");
    Optional<Fact<Length>> step = e.length("step");
    if (e.has("beside") != e.has("step")) {
      e.problem(
          e.has("beside") ? "beside" : "step",
          "beside: LEVEL, step: 4 ft 3 in",
          "",
          "level '%s' is a split level: say which level it stands beside and how much higher its floor lies (a minus if lower)"
              .formatted(name));
    }
    if (other.filter(name::equals).isPresent()) {
      e.problem("beside", "another level", "", "level '" + name + "' cannot stand beside itself");
    }
    return other.flatMap(o -> step.map(s -> new Level.Beside(o, s)));
  }

  private static void check(String name, Entry e, Map<String, Entry> levels) {
    if (name.equals("attic")) {
      String text = "'attic' is the space under a roof; a level needs another name";
      e.desk().problems().add(e.where(), name, "another name, such as upper", "", text);
    }
    Set<String> below = new TreeSet<>(Set.of(name));
    Entry at = e;
    while (at != null && at.text("above").isPresent()) {
      String next = at.text("above").get();
      if (next.equals(name)) {
        e.problem("above", "the level below", "", "level '" + name + "' cannot lie above itself");
      }
      at = below.add(next) ? levels.get(next) : null;
    }
  }

  /** A level without rooms is most likely a slip; said only when every room names a known level. */
  private static void checkUse(Entry house, Map<String, Entry> levels) {
    Set<String> used = new TreeSet<>();
    house
        .named("rooms", HouseTables.ROOM_TABLE)
        .values()
        .forEach(r -> used.add(r.text("level").orElse("")));
    if (levels.keySet().containsAll(used)) {
      levels.forEach(
          (name, e) -> {
            if (!used.contains(name)) {
              String text = "no room is on level '" + name + "'";
              e.desk().problems().add(e.where(), name, "a room on it, or no such level", "", text);
            }
          });
    }
  }
}
