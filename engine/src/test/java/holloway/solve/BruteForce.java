package holloway.solve;

import holloway.catalog.Cable;
import holloway.catalog.Fit;
import holloway.request.Profile;
import holloway.routing.RouteGraph;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The optimum of tiny orders by trying everything: all simple paths of each run, all combinations,
 * all methods. Shares no code with the planner.
 */
final class BruteForce {
  static final long NONE = Long.MAX_VALUE / 4;

  private record Way(int from, int to, List<Integer> edges, Set<Integer> nodes) {}

  private final RouteGraph g;
  private final Order order;
  private final List<List<Way>> ways = new ArrayList<>();

  /** By hole, with how it is bored, and set of runs: asked for by every way of the others. */
  private final Map<Integer, Map<Integer, Long>> bores = new TreeMap<>();

  private long best = NONE;

  private BruteForce(RouteGraph g, Order order) {
    this.g = g;
    this.order = order;
  }

  /** The least price on the profile's scale, {@link #NONE} if the runs cannot all be routed. */
  static long optimum(RouteGraph g, Order order) {
    BruteForce b = new BruteForce(g, order);
    for (Order.Wanted w : order.runs()) {
      List<Way> list = new ArrayList<>();
      for (int s : new TreeSet<>(g.terminals().get(w.from()))) {
        for (int t : new TreeSet<>(g.terminals().get(w.to()))) {
          b.walk(s, s, t, new ArrayList<>(), new TreeSet<>(Set.of(s)), new HashSet<>(), list);
        }
      }
      b.ways.add(list);
    }
    b.combine(0, new ArrayList<>(), new TreeMap<>());
    return b.best;
  }

  private void walk(
      int start,
      int at,
      int target,
      List<Integer> edges,
      Set<Integer> seen,
      Set<Integer> holes,
      List<Way> out) {
    if (at == target) {
      out.add(new Way(start, target, List.copyOf(edges), Set.copyOf(seen)));
      return;
    }
    for (RouteGraph.Edge e : g.edges()) {
      if ((e.a() != at && e.b() != at) || seen.contains(e.other(at))) {
        continue;
      }
      Set<Integer> more = new HashSet<>(holes);
      boolean once = true;
      for (int h : e.holes()) {
        once &= more.add(h);
      }
      if (once) {
        int next = e.other(at);
        edges.add(e.id());
        seen.add(next);
        walk(start, next, target, edges, seen, more, out);
        seen.remove(next);
        edges.remove(edges.size() - 1);
      }
    }
  }

  private void combine(int k, List<Way> chosen, Map<String, Integer> ends) {
    if (k == ways.size()) {
      best = Math.min(best, price(chosen));
      return;
    }
    Order.Wanted w = order.runs().get(k);
    for (Way way : ways.get(k)) {
      Map<String, Integer> now = new TreeMap<>(ends);
      if (agrees(now, w.from(), way.from()) && agrees(now, w.to(), way.to())) {
        chosen.add(way);
        combine(k + 1, chosen, now);
        chosen.remove(chosen.size() - 1);
      }
    }
  }

  private static boolean agrees(Map<String, Integer> ends, String end, int node) {
    Integer was = ends.putIfAbsent(end, node);
    return was == null || was == node;
  }

  private long price(List<Way> chosen) {
    long sum = 0;
    Set<Integer> works = new TreeSet<>();
    Map<Integer, Integer> loads = new TreeMap<>();
    for (int k = 0; k < chosen.size(); k++) {
      for (int v : chosen.get(k).nodes()) {
        addAll(works, g.nodes().get(v).works());
      }
      for (int id : chosen.get(k).edges()) {
        RouteGraph.Edge e = g.edges().get(id);
        String kind = order.runs().get(k).cable().kind();
        if (g.fares().mayNot(kind, e)) {
          return NONE;
        }
        sum += g.fares().of(kind, e);
        sum += e.price() + (order.profile() == Profile.SHORTEST ? e.length() : 0);
        addAll(works, e.works());
        for (int h : e.holes()) {
          loads.merge(h, 1 << k, (a, b) -> a | b);
        }
      }
    }
    if (sum >= best) {
      return NONE;
    }
    return sum + methods(new ArrayList<>(loads.entrySet()), 0, works);
  }

  private static void addAll(Set<Integer> to, int[] works) {
    for (int w : works) {
      to.add(w);
    }
  }

  private long methods(List<Map.Entry<Integer, Integer>> loads, int i, Set<Integer> works) {
    if (i == loads.size()) {
      return works.stream().mapToLong(w -> priceOf(g.works().get(w))).sum();
    }
    RouteGraph.Hole h = g.holes().get(loads.get(i).getKey());
    int runs = loads.get(i).getValue();
    if (h.methods().isEmpty()) {
      long extra = extra(h, false, runs);
      return extra >= NONE ? NONE : extra + methods(loads, i + 1, works);
    }
    long least = NONE;
    for (RouteGraph.Method m : h.methods()) {
      long extra = extra(h, m.flexible(), runs);
      Set<Integer> more = new TreeSet<>(works);
      addAll(more, m.works());
      least = extra >= NONE ? least : Math.min(least, extra + methods(loads, i + 1, more));
    }
    return least;
  }

  private long extra(RouteGraph.Hole h, boolean flexible, int runs) {
    return bores
        .computeIfAbsent(2 * h.id() + (flexible ? 1 : 0), k -> new TreeMap<>())
        .computeIfAbsent(runs, k -> bores(h, steps(h, flexible), cables(runs)));
  }

  /** A flexible bit is made in 13, 19 and 25 mm; a hole that takes any number has no steps. */
  static List<RouteGraph.Step> steps(RouteGraph.Hole h, boolean flexible) {
    return h.steps().stream()
        .filter(s -> !flexible || List.of(13, 19, 25).contains(s.diameterMm()))
        .toList();
  }

  private long priceOf(RouteGraph.Work w) {
    return w.price() + hole(w.holes());
  }

  private long hole(int count) {
    return order.profile() == Profile.FEWEST_HOLES ? count * 10_000_000_000L : 0;
  }

  private List<Cable> cables(int runs) {
    List<Cable> out = new ArrayList<>();
    for (int k = 0; k < order.runs().size(); k++) {
      if ((runs >> k & 1) == 1) {
        out.add(order.runs().get(k).cable());
      }
    }
    return out;
  }

  private long bores(RouteGraph.Hole h, List<RouteGraph.Step> steps, List<Cable> cables) {
    long one = step(h, steps, cables);
    if (one < NONE || h.second().isEmpty()) {
      return one;
    }
    long least = NONE;
    for (int bits = 0; bits < 1 << cables.size(); bits++) {
      List<Cable> left = new ArrayList<>();
      List<Cable> right = new ArrayList<>();
      for (int i = 0; i < cables.size(); i++) {
        ((bits >> i & 1) == 1 ? left : right).add(cables.get(i));
      }
      long both = step(h, steps, left) + step(h, steps, right);
      least = both >= NONE ? least : Math.min(least, both + h.second().getAsLong() + hole(1));
    }
    return least;
  }

  private static long step(RouteGraph.Hole h, List<RouteGraph.Step> steps, List<Cable> cables) {
    if (h.steps().isEmpty()) {
      return 0;
    }
    for (RouteGraph.Step s : steps) {
      if (Fit.fits(cables, s.diameterMm())) {
        return s.extra();
      }
    }
    return NONE;
  }
}
