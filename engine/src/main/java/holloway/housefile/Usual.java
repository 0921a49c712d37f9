package holloway.housefile;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * What the person says is usual in the house ({@code usual}) or on one level ({@code levels: NAME:
 * usual}); the level's wins.
 */
final class Usual {
  private final Optional<Entry> house;
  private final Map<String, Entry> levels = new TreeMap<>();
  private final Map<String, String> levelOfRoom = new TreeMap<>();

  Usual(Entry file) {
    house = file.map("usual", HouseTables.USUAL);
    file.named("levels", HouseTables.LEVEL_TABLE)
        .forEach(
            (name, e) ->
                e.map("usual", HouseTables.USUAL_HERE).ifPresent(u -> levels.put(name, u)));
    file.named("rooms", HouseTables.ROOM_TABLE)
        .forEach((name, e) -> e.text("level").ifPresent(l -> levelOfRoom.put(name, l)));
  }

  /** The level a room is on; empty text if nobody knows. */
  String levelOf(String room) {
    return levelOfRoom.getOrDefault(room, "");
  }

  /** What is said under a key, on the level first; a table without the key says nothing. */
  <T> Optional<T> first(String level, String key, Function<Entry, Optional<T>> read) {
    Optional<Entry> here = Optional.ofNullable(levels.get(level));
    return here.filter(e -> says(e, key)).flatMap(read).or(() -> house(key, read));
  }

  private <T> Optional<T> house(String key, Function<Entry, Optional<T>> read) {
    return house.filter(e -> says(e, key)).flatMap(read);
  }

  private static boolean says(Entry e, String key) {
    return e.knows(key) && e.has(key);
  }
}
