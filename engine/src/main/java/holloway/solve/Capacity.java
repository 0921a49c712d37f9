package holloway.solve;

import holloway.catalog.Cable;
import holloway.catalog.Fit;
import holloway.routing.RouteGraph;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * What a hole costs beyond its method for the cables that pass it: the bit step, then a second
 * bore. A set of cables is a count for each cable kind of the order.
 */
final class Capacity {
  /**
   * @param extra units beyond the method's works, {@link Network#SHUT} if the set does not fit
   * @param firstMm diameter of the bore, 0 where the place has no limit
   * @param secondMm diameter of the second bore, 0 if there is none
   */
  record Bores(long extra, int firstMm, int secondMm) {
    static final Bores NONE_FITS = new Bores(Network.SHUT, 0, 0);

    boolean fits() {
      return extra < Network.SHUT;
    }
  }

  private record Key(int ladder, long second, List<Integer> counts) {}

  /** A bore that takes so many takes any number an order can have. */
  private static final int MANY = 1 << 17;

  private record Alike(int kind, int diameterMm) {}

  private final Network net;
  private final List<Cable> kinds;
  private final int[] ladderOf;
  private final List<List<RouteGraph.Step>> ladders = new ArrayList<>();
  private final Map<Key, Bores> known = new HashMap<>();
  private final Map<Alike, Integer> mostAlike = new HashMap<>();

  Capacity(Network net, List<Cable> kinds) {
    this.net = net;
    this.kinds = List.copyOf(kinds);
    Map<List<RouteGraph.Step>, Integer> ids = new HashMap<>();
    ladderOf = new int[net.graph.holes().size()];
    for (RouteGraph.Hole h : net.graph.holes()) {
      Integer id = ids.putIfAbsent(h.steps(), ladders.size());
      if (id == null) {
        id = ladders.size();
        ladders.add(h.steps());
      }
      ladderOf[h.id()] = id;
    }
  }

  int kinds() {
    return kinds.size();
  }

  /** The kinds, in the order of the counts. */
  List<Cable> kindList() {
    return kinds;
  }

  /** The cheapest bores that take the set; the same set always gets the same answer. */
  Bores bores(int hole, int[] counts) {
    RouteGraph.Hole h = net.graph.holes().get(hole);
    long second = h.second().isPresent() ? net.secondPrice(h) : -1;
    List<Integer> set = Arrays.stream(counts).boxed().toList();
    Key key = new Key(ladderOf[hole], second, set);
    Bores found = known.get(key);
    if (found == null) {
      found = work(ladders.get(ladderOf[hole]), second, counts);
      known.put(key, found);
    }
    return found;
  }

  private Bores work(List<RouteGraph.Step> steps, long second, int[] counts) {
    if (steps.isEmpty()) {
      return new Bores(0, 0, 0);
    }
    RouteGraph.Step one = smallest(steps, counts);
    if (one != null) {
      return new Bores(one.extra(), one.diameterMm(), 0);
    }
    return second < 0 ? Bores.NONE_FITS : split(steps, second, counts);
  }

  /** Tries every way to share the set between two bores, first kind varying slowest. */
  private Bores split(List<RouteGraph.Step> steps, long second, int[] counts) {
    Bores best = Bores.NONE_FITS;
    int[] left = new int[counts.length];
    boolean more = true;
    while (more) {
      int[] rest = new int[counts.length];
      for (int i = 0; i < counts.length; i++) {
        rest[i] = counts[i] - left[i];
      }
      RouteGraph.Step a = smallest(steps, left);
      RouteGraph.Step b = smallest(steps, rest);
      if (a != null && b != null) {
        long extra = Math.addExact(Math.addExact(a.extra(), b.extra()), second);
        if (extra < best.extra()) {
          best = new Bores(extra, a.diameterMm(), b.diameterMm());
        }
      }
      more = next(left, counts);
    }
    return best;
  }

  private static boolean next(int[] left, int[] most) {
    for (int i = left.length - 1; i >= 0; i--) {
      if (left[i] < most[i]) {
        left[i]++;
        return true;
      }
      left[i] = 0;
    }
    return false;
  }

  private RouteGraph.Step smallest(List<RouteGraph.Step> steps, int[] counts) {
    int[] some = IntStream.range(0, counts.length).filter(k -> counts[k] > 0).toArray();
    for (RouteGraph.Step s : steps) {
      boolean fits =
          some.length == 1
              ? counts[some[0]] <= most(some[0], s.diameterMm())
              : Fit.fits(cables(counts), s.diameterMm());
      if (fits) {
        return s;
      }
    }
    return null;
  }

  private List<Cable> cables(int[] counts) {
    List<Cable> out = new ArrayList<>();
    for (int k = 0; k < counts.length; k++) {
      out.addAll(Collections.nCopies(counts[k], kinds.get(k)));
    }
    return out;
  }

  /** How many of one kind a bore takes. */
  private int most(int kind, int diameterMm) {
    return mostAlike.computeIfAbsent(
        new Alike(kind, diameterMm), a -> mostAlike(kinds.get(kind), diameterMm));
  }

  /** Where some do not fit, no more do: the step to the first that do not is halved. */
  static int mostAlike(Cable cable, int diameterMm) {
    int fit = 0;
    int not = 1;
    while (Fit.fits(Collections.nCopies(not, cable), diameterMm)) {
      fit = not;
      not = Math.multiplyExact(2, not);
      if (fit >= MANY) {
        return Integer.MAX_VALUE;
      }
    }
    while (not - fit > 1) {
      int middle = (fit + not) / 2;
      if (Fit.fits(Collections.nCopies(middle, cable), diameterMm)) {
        fit = middle;
      } else {
        not = middle;
      }
    }
    return fit;
  }
}
