package holloway.solve;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Supplier;

/**
 * Makes the cheapest walk valid: no node and no hole twice. Where a walk breaks this, one of the
 * two arcs that clash is missing in every valid path, so each is closed in turn; the cheapest valid
 * answer wins. Exact unless the limit of searches is hit.
 */
final class PathRepair {
  private final Network net;
  private final int untilFound;
  private final int most;
  private int searches;
  private Path best;

  PathRepair(Network net, int mostSearches) {
    this(net, mostSearches, mostSearches);
  }

  /**
   * @param most searches once a valid path is known
   * @param untilFound searches as long as none is: to miss it would tell somebody there is no way
   */
  PathRepair(Network net, int most, int untilFound) {
    this.net = net;
    this.most = most;
    this.untilFound = untilFound;
  }

  /** Closes arcs in {@code arcPrice} while looking and puts every price back. */
  Path find(long[] arcPrice, Supplier<Path> search) {
    best = null;
    branch(arcPrice, search);
    return best;
  }

  private void branch(long[] arcPrice, Supplier<Path> search) {
    if (searches++ >= (best == null ? untilFound : most)) {
      return;
    }
    Path p = search.get();
    if (p == null || best != null && p.price() >= best.price()) {
      return;
    }
    int[] clash = clash(p);
    if (clash == null) {
      best = p;
      return;
    }
    for (int arc : clash) {
      long kept = arcPrice[arc];
      arcPrice[arc] = Network.SHUT;
      branch(arcPrice, search);
      arcPrice[arc] = kept;
    }
  }

  /** Arcs of which a valid path lacks at least one, or null if the walk is valid. */
  int[] clash(Path p) {
    Map<Integer, Integer> nodeBy = new HashMap<>();
    Map<Integer, Integer> holeBy = new HashMap<>();
    nodeBy.put(p.start(), -1);
    for (int arc : p.arcs()) {
      Integer earlier = nodeBy.putIfAbsent(net.head[arc], arc);
      if (earlier != null) {
        return earlier < 0 ? new int[] {arc} : new int[] {earlier, arc};
      }
      for (int h : net.edgeHoles[arc >> 1]) {
        Integer other = holeBy.putIfAbsent(h, arc);
        if (other != null && other != arc) {
          return new int[] {other, arc};
        }
      }
    }
    return null;
  }

  /** True for two walks over the same arcs. */
  static boolean same(Path a, Path b) {
    return a.start() == b.start() && Arrays.equals(a.arcs(), b.arcs());
  }
}
