package holloway.solve;

import holloway.plan.Certificate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Where the price of a work can be charged to a path: at a node, an edge or a hole, each of which a
 * path passes at most once. A row is what may be shared out once: all places of a work, or, when
 * directed, one direction of an edge or one arc into a node.
 */
final class Places {
  /**
   * A place as the certificate names it.
   *
   * @param work the work; of the room of a hole, where nothing is bought, the class of cables that
   *     share it
   */
  record Place(int work, String kind, int at) {
    boolean isRoom() {
      return kind.equals(ROOM_KIND);
    }
  }

  private static final String ROOM_KIND = Certificate.Share.ROOM;

  final List<Place> places = new ArrayList<>();
  final List<Integer> rowOf = new ArrayList<>();
  final List<Long> rowPrice = new ArrayList<>();
  final boolean directed;

  /** Charged on every walk of an arc: works of the node it leads to and of its edge. */
  final int[][] arcPlaces;

  /** Charged at the first node of a path. */
  final int[][] startPlaces;

  /** By hole and method. */
  final int[][][] holePlaces;

  /**
   * By arc, place of the hole in its edge, and method; null, or the very array of {@link
   * #holePlaces}, where that holds.
   */
  final int[][][][] ownHolePlaces;

  private static final int[] NONE = {};

  private final Network net;
  private final boolean[] single;
  private final boolean[] free;
  private final Map<Place, Integer> index = new HashMap<>();
  private final Map<List<Object>, Integer> rows = new HashMap<>();
  private final Roominess room;
  private final LeastExtra least;
  private final int[] holeOf;
  private int[][] rowMembers;
  private Lifts lifts;
  private long[][] limits;

  /**
   * @param free works that cost nothing in the bound: paid by all, or told apart as zones
   * @param room what holes cost for several cables, and how many of each class fit
   */
  Places(Network net, boolean[] free, boolean directed, Roominess room) {
    this.net = net;
    this.free = free;
    this.room = room;
    least = room.ofAll();
    holeOf = OwnWorks.holeOf(net);
    this.directed = directed;
    holePlaces = new int[net.methods.length][][];
    startPlaces = new int[net.nodes][];
    arcPlaces = new int[2 * net.edges][];
    ownHolePlaces = new int[2 * net.edges][][][];
    single = directed ? Directions.single(net) : new boolean[net.workPrice.length];
    for (int v = 0; v < net.nodes; v++) {
      startPlaces[v] = list(net.nodeWorks[v], "node", v, NONE, false);
    }
    for (int h = 0; h < holePlaces.length; h++) {
      holePlaces[h] = withRoom(h, methods(h, "hole", h, NONE, false));
    }
    for (int arc = 0; arc < arcPlaces.length; arc++) {
      if (!net.edgeShut[arc >> 1]) {
        arc(arc);
      }
    }
  }

  /**
   * Holes that cost something lie on one edge each, so that no path can meet one twice, and take
   * all runs at no extra, so that leaving limits out of the bound loses nothing.
   */
  static boolean mayDirect(Network net, int groups, LeastExtra least, int runs) {
    for (int h = 0; h < net.methods.length; h++) {
      long[] extra = least.of(h);
      boolean limited = extra.length < runs || runs > 0 && extra[runs - 1] > 0;
      boolean costs = Arrays.stream(net.methods[h]).anyMatch(m -> m.length > 0);
      if (limited || costs && net.holeEdges[h].length > 1) {
        return false;
      }
    }
    return 2L * net.edges * groups < 4_000_000;
  }

  private void arc(int arc) {
    int e = arc >> 1;
    int[] ends = concat(net.nodeWorks[net.tail(arc)], net.nodeWorks[net.head[arc]]);
    int[] always = startPlaces[net.head[arc]];
    always = concat(always, list(net.nodeWorks[net.head[arc]], "into", arc, NONE, true));
    always = concat(always, list(net.edgeWorks[e], "edge", e, NONE, false));
    arcPlaces[arc] = concat(always, list(net.edgeWorks[e], "arc", arc, ends, true));
    int[] known = concat(ends, net.edgeWorks[e]);
    if (directed) {
      int[] holes = net.edgeHoles[e];
      ownHolePlaces[arc] = new int[holes.length][][];
      // An arc's share of a work is one for all holes on it; later holes charge it no more.
      int[] met = known;
      for (int i = 0; i < holes.length; i++) {
        int[][] both = holePlaces[holes[i]];
        int[][] oneWay = methods(holes[i], "arc", arc, met, true);
        ownHolePlaces[arc][i] = new int[both.length][];
        for (int m = 0; m < both.length; m++) {
          ownHolePlaces[arc][i][m] = concat(both[m], oneWay[m]);
        }
        for (int[] m : net.methods[holes[i]]) {
          met = concat(met, m);
        }
        if (Arrays.deepEquals(ownHolePlaces[arc][i], holePlaces[holes[i]])) {
          ownHolePlaces[arc][i] = holePlaces[holes[i]];
        }
      }
    }
  }

  /**
   * A hole with no teller, such as one that is there already, has its room as a row of its own; any
   * hole has one for each class of cables of which fewer fit.
   */
  private int[][] withRoom(int hole, int[][] methods) {
    if (directed || net.holeEdges[hole].length == 0) {
      return methods;
    }
    IntList rooms = new IntList();
    if (untold(hole)) {
      rooms.add(place(new Place(0, ROOM_KIND, hole)));
    }
    for (int without = 1; without < room.classes(); without++) {
      if (room.narrower(without, hole) >= 0) {
        rooms.add(place(new Place(without, ROOM_KIND, hole)));
      }
    }
    int[] also = rooms.toArray();
    return methods.length == 0 && also.length > 0
        ? new int[][] {also}
        : Arrays.stream(methods).map(m -> concat(m, also)).toArray(int[][]::new);
  }

  /** What more cables cost, or that not all fit, is told by no work of the hole. */
  private boolean untold(int hole) {
    long[] extra = least.of(hole);
    boolean tight =
        extra.length < least.cables() || extra.length > 0 && extra[extra.length - 1] > 0;
    boolean told =
        Arrays.stream(net.methods[hole])
            .flatMapToInt(Arrays::stream)
            .anyMatch(w -> holeOf[w] == hole);
    return tight && !told;
  }

  private int[][] methods(int hole, String kind, int at, int[] without, boolean alone) {
    return Arrays.stream(net.methods[hole])
        .map(m -> list(m, kind, at, without, alone))
        .toArray(int[][]::new);
  }

  /** Places of those works that are (or are not) met at one place of the graph only. */
  private int[] list(int[] works, String kind, int at, int[] without, boolean alone) {
    int n = 0;
    int[] out = new int[works.length];
    for (int w : works) {
      if (!free[w] && net.workPrice[w] > 0 && single[w] == alone && !has(without, w)) {
        out[n++] = place(new Place(w, kind, at));
      }
    }
    return n == 0 ? NONE : Arrays.copyOf(out, n);
  }

  private int place(Place p) {
    Integer known = index.get(p);
    if (known != null) {
      return known;
    }
    List<Object> row =
        p.isRoom()
            ? List.of(ROOM_KIND, p.work(), p.at())
            : single[p.work()] ? List.of(p.work(), p.at()) : List.of(p.work());
    Integer r = rows.putIfAbsent(row, rowPrice.size());
    if (r == null) {
      r = rowPrice.size();
      rowPrice.add(p.isRoom() ? 0 : net.workPrice[p.work()]);
    }
    index.put(p, places.size());
    places.add(p);
    rowOf.add(r);
    return places.size() - 1;
  }

  /** The number of a place, −1 where nothing is charged. */
  int indexOf(Place p) {
    return index.getOrDefault(p, -1);
  }

  /** Places by method of the i-th hole of the arc's edge. */
  int[][] methodsOf(int arc, int i) {
    return ownHolePlaces[arc] == null
        ? holePlaces[net.edgeHoles[arc >> 1][i]]
        : ownHolePlaces[arc][i];
  }

  /** Places of each row, ascending; call when all places are known. */
  int[][] rowMembers() {
    if (rowMembers == null) {
      IntList[] lists = new IntList[rowPrice.size()];
      Arrays.setAll(lists, r -> new IntList());
      for (int p = 0; p < rowOf.size(); p++) {
        lists[rowOf.get(p)].add(p);
      }
      rowMembers = Arrays.stream(lists).map(IntList::toArray).toArray(int[][]::new);
    }
    return rowMembers;
  }

  long priceOf(int work) {
    return net.workPrice[work];
  }

  /** Edges whose price a share at the place is part of. */
  int[] edgesNear(int place) {
    Place p = places.get(place);
    return switch (p.kind()) {
      case "hole", ROOM_KIND -> net.holeEdges[p.at()];
      case "edge" -> new int[] {p.at()};
      case "node" -> net.edgesAt(p.at());
      default -> new int[] {p.at() >> 1};
    };
  }

  /**
   * For the own work of a hole its price with 1, 2, … cables, for the room of a hole what it costs
   * with so many, which only the room of all tells; null for a row that all share in full.
   */
  long[] limit(int row) {
    if (limits == null) {
      limits = new long[rowPrice.size()][];
      for (int r = 0; r < limits.length; r++) {
        limits[r] = limitOf(places.get(rowMembers()[r][0]));
      }
    }
    return limits[row];
  }

  private long[] limitOf(Place p) {
    if (p.isRoom() && p.work() > 0) {
      return new long[room.narrower(p.work(), p.at())];
    }
    int hole = holeToldBy(p);
    if (directed || hole < 0) {
      return null;
    }
    long[] out = least.of(hole).clone();
    for (int n = 0; n < out.length; n++) {
      out[n] = Math.addExact(out[n], p.isRoom() ? 0 : net.workPrice[p.work()]);
    }
    return out;
  }

  private int holeToldBy(Place p) {
    return p.isRoom() ? p.at() : holeOf[p.work()];
  }

  /** How many rents there may be: for each hole one for each class of cables. */
  int rents() {
    return holePlaces.length * room.classes();
  }

  /**
   * The rent that lifts the limit of a row: by class, then by hole, where the row tells of a hole
   * that does not take all cables of the class; −1 for any other row. The rows of all methods of a
   * hole have one, for it is made one way.
   */
  int rentOf(int row) {
    long[] limit = limit(row);
    if (limit == null || limit.length >= least.cables()) {
      return -1;
    }
    Place p = places.get(rowMembers()[row][0]);
    return holeToldBy(p) + (p.isRoom() ? p.work() * holePlaces.length : 0);
  }

  /** Works that may lift what a hole's own work tells of it. */
  Lifts lifts() {
    if (lifts == null) {
      lifts = new Lifts(this, net, holeOf);
    }
    return lifts;
  }

  /** Whether a group pays at the places of the row. */
  boolean pays(int row, int group) {
    Place p = places.get(rowMembers()[row][0]);
    return !p.isRoom() || room.counts(p.work(), group);
  }

  /** Classes of cables mean the same in both. */
  boolean sameClasses(Places other) {
    return room.sameClasses(other.room);
  }

  static boolean has(int[] values, int value) {
    for (int v : values) {
      if (v == value) {
        return true;
      }
    }
    return false;
  }

  private static int[] concat(int[] a, int[] b) {
    if (b.length == 0) {
      return a;
    }
    int[] out = Arrays.copyOf(a, a.length + b.length);
    System.arraycopy(b, 0, out, a.length, b.length);
    return out;
  }
}
