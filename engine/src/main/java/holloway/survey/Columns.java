package holloway.survey;

import holloway.house.Level;
import holloway.house.Room;
import java.util.List;
import java.util.Optional;

/**
 * The storeys of each part of a split-level house, bottom up; a house without split levels is one
 * part. A part comes after the one that its step is measured from.
 */
record Columns(List<List<Level>> columns) {
  Columns {
    columns = columns.stream().map(List::copyOf).toList();
  }

  /** All levels, part by part, each bottom up. */
  List<Level> order() {
    return columns.stream().flatMap(List::stream).toList();
  }

  /** Which part a level belongs to. */
  int of(String level) {
    for (int i = 0; i < columns.size(); i++) {
      if (columns.get(i).stream().anyMatch(l -> l.name().equals(level))) {
        return i;
      }
    }
    throw new IllegalArgumentException("no level " + level);
  }

  /** From 0 for the lowest of its part. */
  int storey(String level) {
    return columns.get(of(level)).stream().map(Level::name).toList().indexOf(level);
  }

  Optional<Level> over(Level l) {
    List<Level> own = columns.get(of(l.name()));
    int i = storey(l.name()) + 1;
    return i < own.size() ? Optional.of(own.get(i)) : Optional.empty();
  }

  Optional<Level> under(Level l) {
    int i = storey(l.name()) - 1;
    return i >= 0 ? Optional.of(columns.get(of(l.name())).get(i)) : Optional.empty();
  }

  /** Do two rooms stand in parts that lie beside each other? */
  boolean apart(Room a, Room b) {
    return of(a.level()) != of(b.level());
  }
}
