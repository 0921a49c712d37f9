package holloway.solve;

import holloway.catalog.Cable;
import holloway.routing.RouteGraph;
import holloway.units.Length;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The least a hole can cost beyond its method for n cables of an order, whichever they are.
 * Reckoned with a cable as slim as the slimmest jacket and the slimmest head: where n cables of the
 * order fit, n of these fit too.
 */
final class LeastExtra {
  private record Key(List<RouteGraph.Step> steps, long second) {}

  private final Network net;
  private final int most;
  private final Cable slim;
  private final Map<Key, long[]> known = new HashMap<>();
  private final Map<Integer, Integer> slimBy = new HashMap<>();

  /**
   * @param most number of cables that could meet in one hole
   */
  LeastExtra(Network net, List<Cable> kinds, int most) {
    this.net = net;
    this.most = most;
    Length jacket = least(kinds.stream().map(Cable::outside).toList());
    Length head = least(kinds.stream().map(Cable::pullHead).toList());
    slim = new Cable("slim", jacket, head, Length.ZERO, false, false, false, "reckoned");
  }

  private static Length least(List<Length> lengths) {
    return lengths.stream().min(Comparator.naturalOrder()).orElse(Length.ZERO);
  }

  /** Entry n−1 is for n cables; the array ends where no more fit or at the most there are. */
  long[] of(int hole) {
    RouteGraph.Hole h = net.graph.holes().get(hole);
    long second = h.second().isPresent() ? net.secondPrice(h) : -1;
    return known.computeIfAbsent(new Key(h.steps(), second), this::work);
  }

  private long[] work(Key key) {
    long[] one = new long[most + 1];
    for (int n = 1; n <= most; n++) {
      // Where n do not fit, no more do.
      one[n] = n > 1 && one[n - 1] >= Network.SHUT ? Network.SHUT : single(key.steps(), n);
    }
    long[] out = new long[most];
    for (int n = 1; n <= most; n++) {
      long least = one[n];
      for (int left = 1; left < n && key.second() >= 0; left++) {
        if (one[left] < Network.SHUT && one[n - left] < Network.SHUT) {
          least = Math.min(least, key.second() + one[left] + one[n - left]);
        }
      }
      if (least >= Network.SHUT) {
        return Arrays.copyOf(out, n - 1);
      }
      out[n - 1] = least;
    }
    return out;
  }

  /** A larger bit may be asked for by other cables, so the least extra of all that fit counts. */
  private long single(List<RouteGraph.Step> steps, int n) {
    if (steps.isEmpty()) {
      return 0;
    }
    return steps.stream()
        .filter(s -> n <= mostSlim(s.diameterMm()))
        .mapToLong(RouteGraph.Step::extra)
        .min()
        .orElse(Network.SHUT);
  }

  private int mostSlim(int diameterMm) {
    return slimBy.computeIfAbsent(diameterMm, d -> Capacity.mostAlike(slim, d));
  }
}
