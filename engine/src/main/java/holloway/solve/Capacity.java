package holloway.solve;

import holloway.catalog.Cable;
import holloway.catalog.Fit;
import holloway.routing.RouteGraph;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

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

  /** A set at a place; its counts are its own and never change. */
  private record Key(int ladder, long second, int[] counts) {
    @Override
    public boolean equals(Object o) {
      return o instanceof Key k
          && k.ladder == ladder
          && k.second == second
          && Arrays.equals(k.counts, counts);
    }

    @Override
    public int hashCode() {
      return 31 * (31 * Arrays.hashCode(counts) + ladder) + Long.hashCode(second);
    }
  }

  private static final long NO_SECOND = -1;

  /** A bore that takes so many takes any number an order can have. */
  private static final int MANY = 1 << 17;

  private final Network net;
  private final List<Cable> kinds;
  private final int[] ladderOf;

  /** The same for methods that have flexible bits alone. */
  private final int[] flexibleOf;

  private final List<List<RouteGraph.Step>> ladders = new ArrayList<>();
  private final Map<Key, Bores> known = new HashMap<>();

  /** By kind and millimetres: how many of the kind fit, −1 where nobody asked yet. */
  private final int[][] mostAlike;

  private final SetFit mixed;

  private static final long NOT_ASKED = -1;

  /** By kind and ladder: what one cable alone takes, {@link #NOT_ASKED} where nobody asked yet. */
  private final long[][] alone;

  Capacity(Network net, List<Cable> kinds) {
    this.net = net;
    this.kinds = List.copyOf(kinds);
    mixed = new SetFit(this.kinds);
    Map<List<RouteGraph.Step>, Integer> ids = new HashMap<>();
    // Thousands of holes share a few lists: the same object is looked up by what it is once.
    Map<List<RouteGraph.Step>, int[]> shared = new IdentityHashMap<>();
    ladderOf = new int[net.graph.holes().size()];
    flexibleOf = new int[ladderOf.length];
    for (RouteGraph.Hole h : net.graph.holes()) {
      int[] both =
          shared.computeIfAbsent(
              h.steps(), s -> new int[] {ladder(s, ids), ladder(flexible(s), ids)});
      ladderOf[h.id()] = both[0];
      flexibleOf[h.id()] = anyFlexible(h) ? both[1] : both[0];
    }
    alone = new long[kinds.size()][ladders.size()];
    for (long[] known : alone) {
      Arrays.fill(known, NOT_ASKED);
    }
    int widest =
        ladders.stream()
            .flatMap(List::stream)
            .mapToInt(RouteGraph.Step::diameterMm)
            .max()
            .orElse(0);
    mostAlike = new int[kinds.size()][widest + 1];
    for (int[] known : mostAlike) {
      Arrays.fill(known, -1);
    }
  }

  private static boolean anyFlexible(RouteGraph.Hole h) {
    for (RouteGraph.Method m : h.methods()) {
      if (m.flexible()) {
        return true;
      }
    }
    return false;
  }

  private int ladder(List<RouteGraph.Step> steps, Map<List<RouteGraph.Step>, Integer> ids) {
    Integer id = ids.putIfAbsent(steps, ladders.size());
    if (id == null) {
      ladders.add(steps);
    }
    return id == null ? ladders.size() - 1 : id;
  }

  /** Those a flexible bit is made in. */
  static List<RouteGraph.Step> flexible(List<RouteGraph.Step> steps) {
    return steps.stream().filter(s -> Fit.FLEXIBLE_MM.contains(s.diameterMm())).toList();
  }

  int kinds() {
    return kinds.size();
  }

  /** The kinds, in the order of the counts. */
  List<Cable> kindList() {
    return kinds;
  }

  /**
   * The cheapest bores that take the set by whatever method; the same set always gets the same
   * answer.
   */
  Bores bores(int hole, int[] counts) {
    return within(hole, ladderOf[hole], counts);
  }

  /** What one cable of a kind adds in a hole that has none, by whatever method. */
  long alone(int hole, int kind) {
    int ladder = ladderOf[hole];
    if (alone[kind][ladder] == NOT_ASKED) {
      int[] one = new int[kinds.size()];
      one[kind] = 1;
      alone[kind][ladder] = work(ladders.get(ladder), NO_SECOND, one).extra();
    }
    return alone[kind][ladder];
  }

  /** The same by one of the hole's methods; an opening that is there has none. */
  Bores bores(int hole, int method, int[] counts) {
    List<RouteGraph.Method> methods = net.graph.holes().get(hole).methods();
    boolean flexible = !methods.isEmpty() && methods.get(method).flexible();
    return within(hole, flexible ? flexibleOf[hole] : ladderOf[hole], counts);
  }

  /** False where every method bores the same sizes. */
  boolean dependsOnMethod(int hole) {
    return flexibleOf[hole] != ladderOf[hole];
  }

  private Bores within(int hole, int ladder, int[] counts) {
    RouteGraph.Hole h = net.graph.holes().get(hole);
    long second = h.second().isPresent() ? net.secondPrice(h) : NO_SECOND;
    Bores found = known.get(new Key(ladder, second, counts));
    if (found == null) {
      found = work(ladders.get(ladder), second, counts);
      known.put(new Key(ladder, second, counts.clone()), found);
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

  /**
   * Tries every way to share the set between two bores, first kind varying slowest; from the middle
   * on the same ways come again with the bores changed round.
   */
  private Bores split(List<RouteGraph.Step> steps, long second, int[] counts) {
    Bores best = Bores.NONE_FITS;
    int[] left = new int[counts.length];
    int[] rest = counts.clone();
    while (Arrays.compare(left, rest) <= 0) {
      RouteGraph.Step a = smallest(steps, left);
      RouteGraph.Step b = a == null ? null : smallest(steps, rest);
      if (a != null && b != null) {
        long extra = Math.addExact(Math.addExact(a.extra(), b.extra()), second);
        if (extra < best.extra()) {
          best = new Bores(extra, a.diameterMm(), b.diameterMm());
        }
      }
      next(left, counts);
      for (int i = 0; i < counts.length; i++) {
        rest[i] = counts[i] - left[i];
      }
    }
    return best;
  }

  /** Counts on; after the last way comes the first again. */
  private static void next(int[] left, int[] most) {
    for (int i = left.length - 1; i >= 0; i--) {
      if (left[i] < most[i]) {
        left[i]++;
        return;
      }
      left[i] = 0;
    }
  }

  private RouteGraph.Step smallest(List<RouteGraph.Step> steps, int[] counts) {
    int only = onlyKind(counts);
    for (RouteGraph.Step s : steps) {
      boolean fits =
          only >= 0
              ? counts[only] <= most(only, s.diameterMm())
              : mixed.fits(counts, s.diameterMm());
      if (fits) {
        return s;
      }
    }
    return null;
  }

  /** The kind of a set of one kind, else −1. */
  private static int onlyKind(int[] counts) {
    int only = -1;
    for (int k = 0; k < counts.length; k++) {
      if (counts[k] > 0) {
        if (only >= 0) {
          return -1;
        }
        only = k;
      }
    }
    return only;
  }

  /** How many of one kind a bore takes. */
  private int most(int kind, int diameterMm) {
    int[] known = mostAlike[kind];
    if (known[diameterMm] < 0) {
      known[diameterMm] = mostAlike(kinds.get(kind), diameterMm);
    }
    return known[diameterMm];
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
