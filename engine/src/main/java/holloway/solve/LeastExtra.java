package holloway.solve;

import holloway.catalog.Cable;
import holloway.catalog.Fit;
import holloway.routing.RouteGraph;
import holloway.units.Length;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The least a hole can cost beyond its method for n cables of an order, whichever they are.
 * Reckoned with the n slimmest jackets of the order, all with its slimmest head, the widest jacket
 * pulled last: where any n cables of the order fit, these fit too. A few slim cables among many
 * thick ones do not make a hole look roomy.
 */
final class LeastExtra {
  private record Key(List<RouteGraph.Step> steps, long second) {}

  private final Network net;
  private final int most;

  /** By jacket, the slimmest first; heads are alike, so they are pulled in the order of names. */
  private final List<Cable> slimmest;

  private final Map<Key, long[]> known = new HashMap<>();
  private final Map<Integer, Integer> slimBy = new HashMap<>();

  /**
   * @param cables of all runs that could meet in one hole
   */
  LeastExtra(Network net, List<Cable> cables) {
    this.net = net;
    most = cables.size();
    Length head =
        cables.stream().map(Cable::pullHead).min(Comparator.naturalOrder()).orElse(Length.ZERO);
    List<Length> jackets = cables.stream().map(Cable::outside).sorted().toList();
    slimmest =
        IntStream.range(0, most)
            .mapToObj(i -> slim("slim %09d".formatted(i), jackets.get(i), head))
            .toList();
  }

  /** The slimmest jacket there is. */
  Length slimmest() {
    return slimmest.get(0).outside();
  }

  /** How many there are in the order. */
  int cables() {
    return most;
  }

  private static Cable slim(String name, Length jacket, Length head) {
    return new Cable(name, jacket, head, Length.ZERO, false, false, false, "reckoned");
  }

  /** Entry n−1 is for n cables; the array ends where no more fit or at the most there are. */
  long[] of(int hole) {
    return of(hole, false);
  }

  /**
   * @param flexible bored with flexible bits alone, else with any the hole takes
   */
  long[] of(int hole, boolean flexible) {
    RouteGraph.Hole h = net.graph.holes().get(hole);
    long second = h.second().isPresent() ? net.secondPrice(h) : -1;
    List<RouteGraph.Step> steps = flexible ? Capacity.flexible(h.steps()) : h.steps();
    return known.computeIfAbsent(new Key(steps, second), this::work);
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

  /** Where some of the slimmest do not fit, no more do. */
  private int mostSlim(int diameterMm) {
    return slimBy.computeIfAbsent(
        diameterMm,
        d -> {
          int fit = 0;
          int not = most + 1;
          while (not - fit > 1) {
            int middle = (fit + not) / 2;
            if (Fit.fits(slimmest.subList(0, middle), d)) {
              fit = middle;
            } else {
              not = middle;
            }
          }
          return fit;
        });
  }
}
