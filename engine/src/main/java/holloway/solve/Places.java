package holloway.solve;

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
      return HoleRows.isRoom(this);
    }
  }

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
  private final Map<List<Object>, Integer> rowNumbers = new HashMap<>();
  private final Roominess room;
  private final HoleRows rows;
  private int[][] rowMembers;
  private Lifts lifts;
  private long[][] limits;
  private boolean[] narrow;

  /**
   * @param free works that cost nothing in the bound: paid by all, or told apart as zones
   * @param room what holes cost for several cables, and how many of each class fit
   */
  Places(Network net, boolean[] free, boolean directed, Roominess room) {
    this.net = net;
    this.free = free;
    this.room = room;
    rows = new HoleRows(net, room);
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

  /** The places of each method of a hole, with those of its room. */
  private int[][] withRoom(int hole, int[][] methods) {
    if (directed || net.holeEdges[hole].length == 0) {
      return methods;
    }
    if (methods.length == 0) {
      int[] also = rooms(hole, null);
      return also.length == 0 ? methods : new int[][] {also};
    }
    int[][] out = new int[methods.length][];
    for (int m = 0; m < out.length; m++) {
      out[m] = concat(methods[m], rooms(hole, net.methods[hole][m]));
    }
    return out;
  }

  private int[] rooms(int hole, int[] method) {
    return rows.rooms(hole, method).stream().mapToInt(this::place).toArray();
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
            ? List.of(p.kind(), p.work(), p.at())
            : single[p.work()] ? List.of(p.work(), p.at()) : List.of(p.work());
    Integer r = rowNumbers.putIfAbsent(row, rowPrice.size());
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

  /** The hole that is passed at the place, or a negative number. */
  int holeAt(int place) {
    Place p = places.get(place);
    return p.isRoom() ? rows.holeOf(p) : p.kind().equals("hole") ? p.at() : -1;
  }

  /** Edges whose price a share at the place is part of. */
  int[] edgesNear(int place) {
    Place p = places.get(place);
    return switch (p.kind()) {
      case "hole", HoleRows.ROOM, HoleRows.OWN_ROOM -> net.holeEdges[holeAt(place)];
      case "edge" -> new int[] {p.at()};
      case "node" -> net.edgesAt(p.at());
      default -> new int[] {p.at() >> 1};
    };
  }

  /** What the largest shares of a row may be together, see {@link HoleRows#limit}. */
  long[] limit(int row) {
    if (limits == null) {
      limits = new long[rowPrice.size()][];
      for (int r = 0; r < limits.length; r++) {
        Place p = places.get(rowMembers()[r][0]);
        limits[r] = directed && !p.isRoom() ? null : rows.limit(p);
      }
    }
    return limits[row];
  }

  /** How many rents there may be: for each hole one for each class of cables. */
  int rents() {
    return holePlaces.length * rows.classes();
  }

  /**
   * The rent that lifts the limit of a row: by class, then by hole, where not all cables of the
   * class fit by each method; −1 for any other row. The rows of all methods of a hole have one, for
   * it is made one way.
   */
  int rentOf(int row) {
    if (narrow == null) {
      narrow = new boolean[rents()];
      for (int r = 0; r < rowPrice.size(); r++) {
        if (limit(r) != null && rows.isNarrow(limit(r))) {
          narrow[rows.rentOf(places.get(rowMembers()[r][0]))] = true;
        }
      }
    }
    int rent = limit(row) == null ? -1 : rows.rentOf(places.get(rowMembers()[row][0]));
    return rent >= 0 && narrow[rent] ? rent : -1;
  }

  /** The own works of the methods of a hole, if the work is one of them, else the work alone. */
  int[] instead(int work) {
    return rows.instead(work);
  }

  /** Works that may lift what a hole's own work tells of it. */
  Lifts lifts() {
    if (lifts == null) {
      lifts = new Lifts(this, net, rows);
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
