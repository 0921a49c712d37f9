package holloway.housefile;

import holloway.house.Level;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Reads the storeys, sorted by name. */
final class LevelReader {
  private LevelReader() {}

  static List<Level> read(Entry house, Defaults defaults) {
    Map<String, Entry> named = house.named("levels", HouseTables.LEVEL_TABLE);
    if (named.isEmpty() && house.has("levels")) {
      house.problem(
          "levels", "levels: { ground: { floor: slab } }", "", "a house needs at least one level");
    }
    List<Level> levels = new ArrayList<>();
    named.forEach(
        (name, e) -> {
          if (e.text("above").filter(name::equals).isPresent()) {
            e.problem("above", "another level", "", "level '" + name + "' cannot lie above itself");
          }
          FloorReader.read(e, defaults)
              .ifPresent(
                  floor ->
                      levels.add(
                          new Level(
                              name,
                              floor,
                              e.length("ceiling-height").orElse(defaults.ceilingHeight()),
                              e.text("above"),
                              e.length("rise"),
                              e.where())));
        });
    return levels;
  }
}
