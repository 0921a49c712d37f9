package holloway.routing;

import holloway.geometry.Point3;
import holloway.hollow.Hollow;
import holloway.hollow.HollowHouse;
import holloway.hollow.HollowKind;
import holloway.hollow.Site;
import holloway.hollow.SiteKind;
import holloway.hollow.Solids;
import holloway.hollow.Way;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * All fishes: within one blind hollow between two hands, or across one crossing into a second blind
 * hollow with an access on at least one side. Each becomes one edge of the graph.
 */
final class Fishes {
  /**
   * A way for a hand into a blind hollow.
   *
   * @param hole the hole of the lead, or {@link HoleBook#NONE}
   */
  private record Port(int node, int hole, FishMemory.Hand hand) {
    Point3 entry() {
      return hand.entry();
    }

    List<RouteGraph.Piece> lead() {
      return hand.lead();
    }

    boolean access() {
      return hand.access();
    }
  }

  private final HollowHouse house;
  private final GraphDraft draft;
  private final Prices prices;
  private final FishPaths paths;
  private final Accesses accesses;
  private final HoleBook book;
  private final Map<String, List<Port>> ports = new TreeMap<>();
  private final Map<String, List<Port>> inOrder = new HashMap<>();
  private final Map<String, Hollow> blind = new TreeMap<>();
  private final FishMemory memory;

  /**
   * @param memory of fishes of this house at these prices
   */
  Fishes(
      HollowHouse house,
      GraphDraft draft,
      Prices prices,
      Solids solids,
      Accesses accesses,
      HoleBook book,
      FishMemory memory) {
    this.memory = memory;
    this.house = house;
    this.draft = draft;
    this.prices = prices;
    this.paths = new FishPaths(house, prices, solids);
    this.accesses = accesses;
    this.book = book;
    for (Hollow h : house.hollows()) {
      if (h.blind() && FishLimits.most(h.kind(), h.fill()) > 0) {
        blind.put(h.id(), h);
      }
    }
  }

  /**
   * @param handNodes node of a crossing's end in a hand hollow, by site id and hollow id
   */
  void find(Map<String, Integer> handNodes) {
    for (Hollow h : blind.values()) {
      for (Accesses.Access a : accesses.in(h.id())) {
        port(h, a.node(), a.at(), List.of(), HoleBook.NONE, true);
      }
    }
    for (Site s : house.sites()) {
      side(s, s.hollowA(), s.a(), s.hollowB(), s.b(), handNodes);
      side(s, s.hollowB(), s.b(), s.hollowA(), s.a(), handNodes);
    }
    blind.values().forEach(this::within);
    house.sites().forEach(this::across);
  }

  /**
   * @param entry where the cable comes into the hollow
   * @param lead pieces from the hand's node to the entry
   * @param access the hand is in the hollow itself
   */
  private void port(
      Hollow h, int node, Point3 entry, List<RouteGraph.Piece> lead, int hole, boolean access) {
    String site = hole < 0 ? "" : draft.holes.get(hole).site();
    FishMemory.Hand hand =
        new FishMemory.Hand(draft.nodes.get(node).name(), entry, lead, site, access);
    ports.computeIfAbsent(h.id(), k -> new ArrayList<>()).add(new Port(node, hole, hand));
  }

  /**
   * Ports of the hollow on one side of a crossing: a hand in the open on the other side, or one
   * that reaches through from an access there.
   */
  private void side(
      Site s, String other, Point3 far, String id, Point3 near, Map<String, Integer> handNodes) {
    Hollow h = blind.get(id);
    if (h == null) {
      return;
    }
    int hole = book.of(s);
    if (hole == HoleBook.CANNOT) {
      return;
    }
    RouteGraph.Piece pass = new RouteGraph.Piece.Pass(s.id(), List.of(far, near));
    Integer hand = handNodes.get(s.id() + "@" + other);
    if (hand != null) {
      port(h, hand, near, List.of(pass), hole, false);
      return;
    }
    Hollow behind = blind.get(other);
    if (behind == null || s.kind() == SiteKind.PLATE_STACK) {
      return;
    }
    for (Accesses.Access a : accesses.in(other)) {
      List<Point3> path = memory.reach(behind, a.at(), far, () -> paths.reach(behind, a.at(), far));
      if (!path.isEmpty()) {
        long price = prices.fishLeg(behind.kind(), behind.fill(), GraphDraft.lengthOf(path));
        RouteGraph.Piece reach = new RouteGraph.Piece.Leg(other, behind.kind(), path, false, price);
        port(h, a.node(), near, List.of(reach, pass), hole, false);
      }
    }
  }

  private void within(Hollow h) {
    List<Port> list = sorted(h);
    List<FishMemory.Hand> hands = hands(list);
    List<FishMemory.Found> found = memory.within(h, hands, () -> fishes(h, list));
    if (found.isEmpty()) {
      return; // a tube or a trench that nothing lies in is neither a hole nor dug
    }
    int tube = book.tube(h);
    int[] dug = OutdoorNet.dug(house, draft, prices, h);
    for (FishMemory.Found f : found) {
      Port p = list.get(f.from());
      Port q = list.get(f.to());
      draft.edge(p.node(), q.node(), f.laid(), holes(p.hole(), tube, q.hole()), dug, f.ways());
    }
  }

  private List<FishMemory.Found> fishes(Hollow h, List<Port> list) {
    List<FishMemory.Found> out = new ArrayList<>();
    for (int i = 0; i < list.size(); i++) {
      for (int j = i + 1; j < list.size(); j++) {
        Port p = list.get(i);
        Port q = list.get(j);
        boolean sameHole = p.hole() >= 0 && p.hole() == q.hole();
        if (p.node() != q.node() && !sameHole) {
          List<Point3> path = paths.path(h, p.entry(), q.entry());
          if (!path.isEmpty()) {
            List<RouteGraph.Piece> pieces = new ArrayList<>(p.lead());
            pieces.add(paths.leg(h, path, p.access() || q.access()));
            pieces.addAll(reversed(q.lead()));
            int ways = ways(h) | ways(p.lead()) | ways(q.lead());
            out.add(new FishMemory.Found(i, j, GraphDraft.Laid.of(pieces), ways));
          }
        }
      }
    }
    return out;
  }

  private List<Port> sorted(Hollow h) {
    return inOrder.computeIfAbsent(
        h.id(),
        id -> {
          List<Port> list = new ArrayList<>(ports.getOrDefault(id, List.of()));
          list.sort(Comparator.comparingInt(Port::node).thenComparingInt(Port::hole));
          return list;
        });
  }

  private static List<FishMemory.Hand> hands(List<Port> ports) {
    return ports.stream().map(Port::hand).toList();
  }

  private void across(Site s) {
    Hollow one = blind.get(s.hollowA());
    Hollow other = blind.get(s.hollowB());
    int hole = one == null || other == null ? HoleBook.CANNOT : book.of(s);
    if (hole == HoleBook.CANNOT) {
      return;
    }
    boolean straight =
        s.kind() == SiteKind.PLATE_STACK
            || s.kind() == SiteKind.BLOCK
            // a knockout lies across the bays: a rod does not turn into it
            || s.made() && s.pierces().isEmpty();
    List<Port> here = sorted(one);
    List<Port> there = sorted(other);
    for (FishMemory.Found f :
        memory.across(
            s,
            hole >= 0,
            new FishMemory.Side(one, hands(here)),
            new FishMemory.Side(other, hands(there)),
            () -> fishes(s, hole, straight, one, here, other, there))) {
      Port p = here.get(f.from());
      Port q = there.get(f.to());
      int[] passed = holes(p.hole(), hole, q.hole());
      draft.edge(p.node(), q.node(), f.laid(), passed, new int[0], f.ways());
    }
  }

  private List<FishMemory.Found> fishes(
      Site s,
      int hole,
      boolean straight,
      Hollow one,
      List<Port> here,
      Hollow other,
      List<Port> there) {
    List<FishMemory.Found> out = new ArrayList<>();
    for (int i = 0; i < here.size(); i++) {
      Port p = here.get(i);
      List<Point3> first =
          p.hole() == hole && hole >= 0 ? List.of() : paths.path(one, p.entry(), s.a());
      for (int j = 0; j < there.size() && !first.isEmpty(); j++) {
        Port q = there.get(j);
        boolean sameHole = hole >= 0 && q.hole() == hole || p.hole() >= 0 && p.hole() == q.hole();
        boolean fed = straight || p.access() || q.access();
        if (p.node() != q.node() && !sameHole && fed) {
          List<Point3> second = paths.path(other, s.b(), q.entry());
          if (!second.isEmpty()) {
            int ways = ways(one) | ways(other) | ways(p.lead()) | ways(q.lead());
            GraphDraft.Laid laid = GraphDraft.Laid.of(pieces(s, p, q, one, other, first, second));
            out.add(new FishMemory.Found(i, j, laid, ways));
          }
        }
      }
    }
    return out;
  }

  private List<RouteGraph.Piece> pieces(
      Site s, Port p, Port q, Hollow one, Hollow other, List<Point3> first, List<Point3> second) {
    List<RouteGraph.Piece> pieces = new ArrayList<>(p.lead());
    pieces.add(
        new RouteGraph.Piece.Leg(
            one.id(), one.kind(), first, true, prices.fishSetUp() + paths.leg(one, first)));
    pieces.add(new RouteGraph.Piece.Pass(s.id(), List.of(s.a(), s.b())));
    pieces.add(
        new RouteGraph.Piece.Leg(
            other.id(), other.kind(), second, true, prices.handOver() + paths.leg(other, second)));
    pieces.addAll(reversed(q.lead()));
    return pieces;
  }

  /** Ways of the hollows that a hand reaches through on its way in. */
  private int ways(List<RouteGraph.Piece> lead) {
    int bits = 0;
    for (RouteGraph.Piece p : lead) {
      if (p instanceof RouteGraph.Piece.Leg leg && blind.containsKey(leg.hollow())) {
        bits |= ways(blind.get(leg.hollow()));
      }
    }
    return bits;
  }

  private static List<RouteGraph.Piece> reversed(List<RouteGraph.Piece> lead) {
    List<RouteGraph.Piece> out = new ArrayList<>();
    for (int i = lead.size() - 1; i >= 0; i--) {
      RouteGraph.Piece p = lead.get(i);
      out.add(
          p instanceof RouteGraph.Piece.Leg l
              ? new RouteGraph.Piece.Leg(
                  l.hollow(), l.kind(), Paths.reversed(l.path()), l.blind(), l.price())
              : new RouteGraph.Piece.Pass(
                  ((RouteGraph.Piece.Pass) p).site(), Paths.reversed(p.path())));
    }
    return out;
  }

  /** Those of three that are holes, in order. */
  private static int[] holes(int a, int b, int c) {
    int[] out = new int[(a >= 0 ? 1 : 0) + (b >= 0 ? 1 : 0) + (c >= 0 ? 1 : 0)];
    int n = 0;
    if (a >= 0) {
      out[n++] = a;
    }
    if (b >= 0) {
      out[n++] = b;
    }
    if (c >= 0) {
      out[n] = c;
    }
    return out;
  }

  private static int ways(Hollow h) {
    return h.kind() == HollowKind.CHASE
        ? Way.CHASE.bit()
        : h.kind() == HollowKind.PORCH_VOID
            ? Way.OUTSIDE.bit()
            : h.kind() == HollowKind.JOIST_BAY ? Way.JOIST_BAYS.bit() : 0;
  }
}
