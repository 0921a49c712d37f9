package holloway.solve;

import holloway.catalog.Cable;
import holloway.catalog.Fit;
import holloway.hollow.Way;
import holloway.request.Profile;
import holloway.routing.RouteGraph;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;

/**
 * A routing graph as plain arrays with one order's bans and profile laid over it. Arc {@code 2e}
 * walks edge e from a to b, arc {@code 2e+1} from b to a. Banned edges are in no adjacency.
 */
final class Network {
  /** What a hole counts for in fewest-holes, in units. */
  static final long HOLE_SCALE = 10_000_000_000L;

  /**
   * Larger than any real price, small enough to be added up for each hole of a house: a run put on
   * its own best path may overfill every hole there is before it is taken back.
   */
  static final long SHUT = Long.MAX_VALUE / 8192;

  final RouteGraph graph;
  final Profile profile;
  final int nodes;
  final int edges;

  /** Arcs leaving node v are {@code arcs[first[v] .. first[v+1])}. */
  final int[] first;

  final int[] arcs;
  final int[] head;
  final long[] price;

  /**
   * By cable kind of the order, then edge: besides its price; {@link #SHUT} where it may not go.
   */
  final long[][] fare;

  final int[][] nodeWorks;
  final int[][] edgeWorks;
  final int[][] edgeHoles;
  final int[][][] methods;

  /** By hole and method: bored with flexible bits alone, where other methods bore wider. */
  final boolean[][] flexible;

  final long[] workPrice;
  final boolean[] workShut;
  final boolean[] edgeShut;

  /** Some edge is walked one way only, so runs must not be turned round. */
  final boolean oneWay;

  final int[][] holeEdges;

  /** By hole: the works of all its methods, each once. */
  final int[][] holeWorks;

  private final Index.WorkPlaces workPlaces;

  Network(RouteGraph graph, Profile profile, Set<String> bans, List<Cable> kinds) {
    this.graph = graph;
    this.profile = profile;
    nodes = graph.nodes().size();
    edges = graph.edges().size();
    nodeWorks = new int[nodes][];
    graph.nodes().forEach(n -> nodeWorks[n.id()] = n.works());
    edgeWorks = new int[edges][];
    edgeHoles = new int[edges][];
    price = new long[edges];
    head = new int[2 * edges];
    oneWay = edges();
    methods = new int[graph.holes().size()][][];
    flexible = new boolean[methods.length][];
    graph.holes().forEach(this::hole);
    workPrice = new long[graph.works().size()];
    graph.works().forEach(w -> workPrice[w.id()] = priceOf(w));
    fare = kinds.stream().map(this::fares).toArray(long[][]::new);
    Bans banned = new Bans(graph, bans);
    workShut = banned.works();
    edgeShut = banned.edges();
    first = new int[nodes + 1];
    arcs = adjacency();
    holeEdges = Index.edgesByHole(this);
    holeWorks = Index.worksOfHoles(this);
    workPlaces = new Index.WorkPlaces(this);
  }

  // Plain loops: a sketch lays a network of tens of thousands of edges while somebody waits.

  /** What each edge is by itself; whether some is walked one way only. */
  private boolean edges() {
    boolean any = false;
    for (int e = 0; e < edges; e++) {
      RouteGraph.Edge edge = graph.edges().get(e);
      if (edge.id() != e) {
        throw new IllegalArgumentException("edge " + edge.id() + " stands at place " + e);
      }
      edgeWorks[e] = edge.works();
      edgeHoles[e] = edge.holes();
      price[e] = priceOf(edge);
      head[2 * e] = edge.b();
      head[2 * e + 1] = edge.a();
      any |= edge.oneWay();
    }
    return any;
  }

  private void hole(RouteGraph.Hole h) {
    int[][] ways = new int[h.methods().size()][];
    for (int m = 0; m < ways.length; m++) {
      ways[m] = h.methods().get(m).works();
    }
    methods[h.id()] = ways;
    flexible[h.id()] = flexible(h);
  }

  private static boolean[] flexible(RouteGraph.Hole h) {
    boolean[] out = new boolean[h.methods().size()];
    boolean any = false;
    for (int m = 0; m < out.length; m++) {
      out[m] = h.methods().get(m).flexible();
      any |= out[m];
    }
    boolean less =
        any && h.steps().stream().anyMatch(s -> !Fit.FLEXIBLE_MM.contains(s.diameterMm()));
    return less ? out : new boolean[out.length];
  }

  private long priceOf(RouteGraph.Work w) {
    long counted =
        profile == Profile.FEWEST_HOLES ? Math.multiplyExact(HOLE_SCALE, (long) w.holes()) : 0;
    return Math.addExact(w.price(), counted);
  }

  /** Millimetres times 10^6 are nanometres, so the shortest profile adds the length itself. */
  private long priceOf(RouteGraph.Edge e) {
    return profile == Profile.SHORTEST ? Math.addExact(e.price(), e.length()) : e.price();
  }

  private long[] fares(Cable kind) {
    long[] out = new long[edges];
    if (graph.fares().isFree(kind.kind())) {
      return out;
    }
    for (int i = 0; i < edges; i++) {
      RouteGraph.Edge e = graph.edges().get(i);
      out[i] = graph.fares().mayNot(kind.kind(), e) ? SHUT : graph.fares().of(kind.kind(), e);
    }
    return out;
  }

  /** What an edge costs one cable, works and holes apart. */
  long travel(int edge, int kind) {
    return Math.min(SHUT, price[edge] + fare[kind][edge]);
  }

  /** All cables pay the same everywhere and may go to the same places. */
  boolean alike() {
    return Arrays.stream(fare).allMatch(f -> Arrays.equals(f, fare[0]));
  }

  /** What a second bore costs on the profile's scale. */
  long secondPrice(RouteGraph.Hole h) {
    return Math.addExact(
        h.second().orElseThrow(), profile == Profile.FEWEST_HOLES ? HOLE_SCALE : 0);
  }

  private int[] adjacency() {
    int[] degree = new int[nodes + 1];
    for (int arc = 0; arc < 2 * edges; arc++) {
      degree[tail(arc)] += isWalked(arc) ? 1 : 0;
    }
    for (int v = 0; v < nodes; v++) {
      first[v + 1] = first[v] + degree[v];
    }
    int[] next = Arrays.copyOf(first, nodes);
    int[] out = new int[first[nodes]];
    for (int arc = 0; arc < 2 * edges; arc++) {
      if (isWalked(arc)) {
        out[next[tail(arc)]++] = arc;
      }
    }
    return out;
  }

  private boolean isWalked(int arc) {
    boolean against = oneWay && (arc & 1) == 1 && graph.edges().get(arc >> 1).oneWay();
    return !edgeShut[arc >> 1] && !against;
  }

  /** The edges whose price a work can change, ascending. */
  int[] edgesOfWork(int work) {
    return workPlaces.edges(work);
  }

  int tail(int arc) {
    return head[arc ^ 1];
  }

  /** The greatest common divisor of all that a plan can pay; every plan's price is a multiple. */
  long grain() {
    long g = 0;
    for (long p : price) {
      g = gcd(g, p);
    }
    for (long p : workPrice) {
      g = gcd(g, p);
    }
    for (long[] kind : fare) {
      for (long p : kind) {
        g = p < SHUT ? gcd(g, p) : g;
      }
    }
    for (RouteGraph.Hole h : graph.holes()) {
      g = h.second().isPresent() ? gcd(g, secondPrice(h)) : g;
      for (RouteGraph.Step s : h.steps()) {
        g = gcd(g, s.extra());
      }
    }
    return Math.max(1, g);
  }

  private static long gcd(long a, long b) {
    return b == 0 ? Math.abs(a) : gcd(b, a % b);
  }

  /** Edges that touch a node, in either direction. */
  int[] edgesAt(int node) {
    if (oneWay) {
      return graph.edges().stream()
          .filter(e -> !edgeShut[e.id()] && (e.a() == node || e.b() == node))
          .mapToInt(RouteGraph.Edge::id)
          .toArray();
    }
    int[] out = Arrays.copyOfRange(arcs, first[node], first[node + 1]);
    for (int i = 0; i < out.length; i++) {
      out[i] >>= 1;
    }
    return out;
  }

  /** Edges that touch a hollow or use a way, for a run pinned to it. */
  boolean[] touching(String hollowOrWay) {
    int bits = 0;
    for (Way w : Way.values()) {
      bits |= w.word().equals(hollowOrWay) ? w.bit() : 0;
    }
    boolean[] out = new boolean[edges];
    for (RouteGraph.Edge e : graph.edges()) {
      out[e.id()] = (e.ways() & bits) != 0 || Bans.liesIn(graph, e, hollowOrWay);
    }
    return out;
  }

  /** Works that set up a zone, ascending. */
  List<Integer> zoneWorks() {
    List<Integer> out = new ArrayList<>();
    for (RouteGraph.Work w : graph.works()) {
      if (!w.zone().isEmpty() && !workShut[w.id()]) {
        out.add(w.id());
      }
    }
    return out;
  }
}
