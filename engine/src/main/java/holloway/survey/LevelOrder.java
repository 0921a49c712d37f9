package holloway.survey;

import holloway.house.House;
import holloway.house.Level;
import holloway.house.Room;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;

/** Which level stands above which: as stated, else as the rooms' placings tell. */
final class LevelOrder {
  private LevelOrder() {}

  /**
   * The storeys of each part of the house, bottom up; problems and the order as far as known when
   * it cannot be told.
   */
  static Columns of(House house, Problems problems) {
    TreeMap<String, Level> levels = new TreeMap<>();
    TreeMap<String, TreeSet<String>> below = new TreeMap<>();
    for (Level l : house.levels()) {
      levels.put(l.name(), l);
      below.put(l.name(), new TreeSet<>());
    }
    for (Level l : house.levels()) {
      l.above()
          .ifPresent(
              a -> {
                if (!levels.containsKey(a)) {
                  problems.add(
                      l.where(), "level %s is above %s, which is not a level", l.name(), a);
                } else {
                  below.get(l.name()).add(a);
                }
              });
    }
    for (Room r : house.rooms()) {
      learn(house, r, below, problems);
    }
    List<List<Level>> columns = new ArrayList<>();
    for (TreeSet<String> part : Parts.of(house, below, problems)) {
      TreeMap<String, Level> own = new TreeMap<>(levels);
      own.keySet().retainAll(part);
      columns.add(sort(own, below, problems));
    }
    return new Columns(columns);
  }

  private static void learn(
      House house, Room r, TreeMap<String, TreeSet<String>> below, Problems problems) {
    if (!below.containsKey(r.level())) {
      problems.add(r.where(), "room %s is on level %s, which is not a level", r.name(), r.level());
      return;
    }
    if (r.placing() instanceof Room.Placing.Stacked t) {
      house.rooms().stream()
          .filter(n -> n.name().equals(t.neighbour()) && below.containsKey(n.level()))
          .filter(n -> !n.level().equals(r.level()))
          .forEach(
              n ->
                  below
                      .get(t.above() ? r.level() : n.level())
                      .add(t.above() ? n.level() : r.level()));
    }
  }

  private static List<Level> sort(
      TreeMap<String, Level> levels, TreeMap<String, TreeSet<String>> below, Problems problems) {
    List<Level> order = new ArrayList<>();
    TreeSet<String> left = new TreeSet<>(levels.keySet());
    while (!left.isEmpty()) {
      List<String> next =
          left.stream().filter(l -> below.get(l).stream().noneMatch(left::contains)).toList();
      if (next.isEmpty()) {
        Level any = levels.get(left.first());
        problems.add(
            any.where(), "levels %s stand above each other in a circle", String.join(", ", left));
        return order;
      }
      if (next.size() > 1) {
        Level any = levels.get(next.get(1));
        problems.add(
            any.where(),
            "nothing tells which of the levels %s is above the other. Maybe say above: for one of them, or beside: and step: if one stands beside",
            String.join(", ", next));
      }
      for (String l : next) {
        order.add(levels.get(l));
        left.remove(l);
      }
    }
    return order;
  }
}
