package holloway.support;

import holloway.catalog.Cable;
import holloway.catalog.Fit;
import holloway.hollow.Way;
import holloway.routing.RouteGraph;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * A routing graph as one cable sees it: what an edge costs, in which ways its holes can be made,
 * and what is banned. Reads the graph and the bans by itself and shares no code with the planner.
 */
final class SingleRunNet {
  static final long NONE = Long.MAX_VALUE / 4;
  private static final int NOWHERE = -1;
  private static final int SEVERAL = -2;

  /**
   * One way to pass an edge.
   *
   * @param own what is paid here and nowhere else
   * @param shared works, ascending, that other places of the graph need too: paid once a route
   */
  record Option(long own, int[] shared) {}

  final RouteGraph graph;

  /** Edges at each node that may be used. */
  final List<List<RouteGraph.Edge>> at = new ArrayList<>();

  final long[] price;

  /** The zones by falling price, as work ids. */
  final int[] zones;

  private final Cable cable;
  private final Set<String> bans;

  /** Where a work is met: a place by number, or {@link #SEVERAL}. */
  private final int[] place;

  /** The one node a work belongs to, or less than 0. */
  private final int[] node;

  private final List<List<Option>> options = new ArrayList<>();
  private final Option[] nodeOptions;

  SingleRunNet(RouteGraph graph, Cable cable, Set<String> bans) {
    this.graph = graph;
    this.cable = cable;
    this.bans = bans;
    price = graph.works().stream().mapToLong(w -> shut(w) ? NONE : w.price()).toArray();
    zones =
        graph.works().stream()
            .filter(w -> !w.zone().isEmpty() && price[w.id()] < NONE && w.price() > 0)
            .mapToInt(RouteGraph.Work::id)
            .toArray();
    place = new int[price.length];
    node = new int[price.length];
    meetWorks();
    graph.nodes().forEach(n -> at.add(new ArrayList<>()));
    nodeOptions = graph.nodes().stream().map(n -> option(0, n.works())).toArray(Option[]::new);
    for (RouteGraph.Edge e : graph.edges()) {
      options.add(null);
      if (!banned(e)) {
        at.get(e.a()).add(e);
        at.get(e.b()).add(e);
      }
    }
  }

  private boolean shut(RouteGraph.Work w) {
    return !w.zone().isEmpty()
        && (bans.contains(w.zone())
            || w.zone().contains("attic") && bans.contains("attic")
            || w.zone().contains("crawlspace") && bans.contains("under-floor")
            || w.zone().contains("ladder") && bans.contains("outside"));
  }

  private boolean banned(RouteGraph.Edge e) {
    int ways = e.ways();
    Set<String> touched = new TreeSet<>();
    for (int h : e.holes()) {
      RouteGraph.Hole hole = graph.holes().get(h);
      ways |= hole.ways();
      touched.addAll(Set.copyOf(List.of(hole.site(), hole.hollowA(), hole.hollowB())));
    }
    for (RouteGraph.Piece p : e.pieces()) {
      if (p instanceof RouteGraph.Piece.Leg leg) {
        touched.add(leg.hollow());
      } else if (p instanceof RouteGraph.Piece.Pass pass) {
        touched.add(pass.site());
      }
    }
    for (Way w : Way.values()) {
      if ((ways & w.bit()) != 0) {
        touched.add(w.word());
      }
    }
    return touched.stream().anyMatch(bans::contains);
  }

  /** A hole is one place however many edges pass it: no route passes it twice. */
  private void meetWorks() {
    java.util.Arrays.fill(place, NOWHERE);
    java.util.Arrays.fill(node, NOWHERE);
    for (RouteGraph.Node n : graph.nodes()) {
      meet(place, n.works(), n.id());
      meet(node, n.works(), n.id());
    }
    int next = graph.nodes().size();
    for (RouteGraph.Edge e : graph.edges()) {
      meet(place, e.works(), next++);
    }
    for (RouteGraph.Hole h : graph.holes()) {
      for (RouteGraph.Method m : h.methods()) {
        meet(place, m.works(), next);
      }
      next++;
    }
  }

  private static void meet(int[] where, int[] works, int here) {
    for (int w : works) {
      where[w] = where[w] == NOWHERE || where[w] == here ? here : SEVERAL;
    }
  }

  /** Whether a work is paid where it is met, and can be needed nowhere else. */
  private boolean isOwn(int work) {
    return place[work] >= 0;
  }

  /** What is paid at a node and nowhere else. */
  long ownOf(int at) {
    return nodeOptions[at].own();
  }

  /** The node's works that other places need too. */
  int[] worksOf(int at) {
    return nodeOptions[at].shared();
  }

  /** The only node whose work this is, or less than 0 where there is none or several. */
  int nodeOf(int work) {
    return node[work];
  }

  List<Option> options(RouteGraph.Edge e) {
    List<Option> known = options.get(e.id());
    if (known == null) {
      known = work(e);
      options.set(e.id(), known);
    }
    return known;
  }

  private List<Option> work(RouteGraph.Edge e) {
    List<Option> out = List.of(option(e.price(), e.works()));
    for (int h : e.holes()) {
      List<Option> more = new ArrayList<>();
      for (Option way : ways(graph.holes().get(h))) {
        for (Option o : out) {
          more.add(new Option(o.own() + way.own(), WorkSets.union(o.shared(), way.shared())));
        }
      }
      out = best(more);
    }
    Set<Integer> passed = new TreeSet<>();
    for (int h : e.holes()) {
      if (!passed.add(h)) {
        return List.of();
      }
    }
    return best(out);
  }

  private List<Option> ways(RouteGraph.Hole h) {
    long extra = h.steps().isEmpty() ? 0 : NONE;
    for (RouteGraph.Step s : h.steps()) {
      if (extra == NONE && Fit.fits(List.of(cable), s.diameterMm())) {
        extra = s.extra();
      }
    }
    if (h.methods().isEmpty()) {
      return List.of(new Option(extra, new int[0]));
    }
    List<Option> out = new ArrayList<>();
    for (RouteGraph.Method m : h.methods()) {
      out.add(option(extra, m.works()));
    }
    return best(out);
  }

  private Option option(long own, int[] works) {
    TreeSet<Integer> shared = new TreeSet<>();
    TreeSet<Integer> once = new TreeSet<>();
    for (int w : works) {
      (isOwn(w) ? once : shared).add(w);
    }
    for (int w : once) {
      own += price[w];
    }
    shared.removeIf(w -> price[w] == 0);
    return new Option(own, shared.stream().mapToInt(Integer::intValue).toArray());
  }

  /** Without those that another one beats even if it alone has to pay for what only it needs. */
  private List<Option> best(List<Option> all) {
    List<Option> out = new ArrayList<>();
    for (Option o : all) {
      if (o.own() < NONE && WorkSets.price(o.shared(), price) < NONE) {
        boolean beaten = out.stream().anyMatch(b -> beats(b, o));
        if (!beaten) {
          out.removeIf(b -> beats(o, b));
          out.add(o);
        }
      }
    }
    return out;
  }

  private boolean beats(Option a, Option b) {
    return a.own() + WorkSets.missing(b.shared(), a.shared(), price) <= b.own();
  }
}
