package holloway.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Paths of one group that were short once, as the model of the bound reads them: travel, places
 * where a share is due, and holes where the least of several methods is.
 */
final class PathPool {
  /**
   * @param travel what the path costs whatever the shares are
   * @param places places charged on it, ascending
   * @param menus holes on it with more than one method, by number in {@link #menus}
   */
  record Column(long travel, int[] places, int[] menus) {}

  /** Told by where it begins and what it passes; a large house has a hundred thousand of them. */
  private record Walk(Path path) {
    @Override
    public boolean equals(Object o) {
      return o instanceof Walk w
          && w.path.start() == path.start()
          && Arrays.equals(w.path.arcs(), path.arcs());
    }

    @Override
    public int hashCode() {
      return 31 * Arrays.hashCode(path.arcs()) + path.start();
    }
  }

  /** By hole with a choice: for each open method the places charged. */
  final List<int[][]> menus = new ArrayList<>();

  final List<Column> columns = new ArrayList<>();
  private final Set<Walk> known = new HashSet<>();
  private final Map<List<Integer>, Integer> menuOf = new HashMap<>();
  private final GroupPaths paths;
  private final int group;

  PathPool(GroupPaths paths, int group) {
    this.paths = paths;
    this.group = group;
  }

  /** Takes the path in unless it is there. */
  boolean add(Path p) {
    if (!known.add(new Walk(p))) {
      return false;
    }
    TreeSet<Integer> places = new TreeSet<>();
    IntList chosen = new IntList();
    for (int at : paths.lengths.startPlaces(p.start())) {
      places.add(at);
    }
    long travel = 0;
    for (int arc : p.arcs()) {
      travel += paths.lengths.travelOf(arc, group);
      for (int at : paths.lengths.arcPlaces(arc)) {
        places.add(at);
      }
      for (int[][] methods : paths.lengths.openMethods(arc)) {
        if (methods.length == 1) {
          Arrays.stream(methods[0]).forEach(places::add);
        } else if (Arrays.stream(methods).allMatch(m -> m.length > 0)) {
          chosen.add(menu(methods));
        }
      }
    }
    columns.add(
        new Column(
            travel, places.stream().mapToInt(Integer::intValue).toArray(), chosen.toArray()));
    return true;
  }

  private int menu(int[][] methods) {
    List<Integer> key = new ArrayList<>();
    for (int[] m : methods) {
      Arrays.stream(m).forEach(key::add);
      key.add(-1);
    }
    Integer n = menuOf.putIfAbsent(key, menus.size());
    if (n == null) {
      menus.add(methods);
      return menus.size() - 1;
    }
    return n;
  }
}
