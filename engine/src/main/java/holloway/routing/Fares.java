package holloway.routing;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * What hangs on the kind of cable that walks an edge: what its metres cost, and edges that it may
 * not use at all. A kind that is not named pays nothing and may go anywhere.
 *
 * @param metre units a metre, by cable kind
 * @param shut ids of edges, by cable kind
 */
public record Fares(Map<String, Double> metre, Map<String, Set<Integer>> shut) {
  /** Every cable alike. */
  public static final Fares NONE = new Fares(Map.of(), Map.of());

  public Fares {
    metre = Map.copyOf(metre);
    Map<String, Set<Integer>> copy = new TreeMap<>();
    shut.forEach((kind, edges) -> copy.put(kind, Set.copyOf(edges)));
    shut = Map.copyOf(copy);
  }

  /** Units of a cable for an edge's length, besides the edge's own price. */
  public long of(String cable, RouteGraph.Edge e) {
    return Math.round(metre.getOrDefault(cable, 0.0) * e.length() / 1e9);
  }

  public boolean mayNot(String cable, RouteGraph.Edge e) {
    return shut.getOrDefault(cable, Set.of()).contains(e.id());
  }

  /** It pays nothing and may go anywhere. */
  public boolean isFree(String cable) {
    return metre.getOrDefault(cable, 0.0) == 0 && shut.getOrDefault(cable, Set.of()).isEmpty();
  }

  /** The same for both kinds on every edge. */
  public boolean alike(String one, String other) {
    return metre.getOrDefault(one, 0.0).equals(metre.getOrDefault(other, 0.0))
        && shut.getOrDefault(one, Set.of()).equals(shut.getOrDefault(other, Set.of()));
  }
}
