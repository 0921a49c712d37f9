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
import java.util.Collections;
import java.util.Comparator;
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
   * @param entry where the cable comes into the hollow
   * @param lead pieces from the hand's node to the entry
   * @param hole the hole of the lead, or {@link HoleBook#NONE}
   * @param access the hand is in the hollow itself
   */
  private record Port(
      int node, Point3 entry, List<RouteGraph.Piece> lead, int hole, boolean access) {}

  private final HollowHouse house;
  private final GraphDraft draft;
  private final Prices prices;
  private final Solids solids;
  private final Accesses accesses;
  private final HoleBook book;
  private final Map<String, List<Port>> ports = new TreeMap<>();
  private final Map<String, Hollow> blind = new TreeMap<>();

  Fishes(
      HollowHouse house,
      GraphDraft draft,
      Prices prices,
      Solids solids,
      Accesses accesses,
      HoleBook book) {
    this.house = house;
    this.draft = draft;
    this.prices = prices;
    this.solids = solids;
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
        port(h, new Port(a.node(), a.at(), List.of(), HoleBook.NONE, true));
      }
    }
    for (Site s : house.sites()) {
      side(s, s.hollowA(), s.a(), s.hollowB(), s.b(), handNodes);
      side(s, s.hollowB(), s.b(), s.hollowA(), s.a(), handNodes);
    }
    blind.values().forEach(this::within);
    house.sites().forEach(this::across);
  }

  private void port(Hollow h, Port p) {
    ports.computeIfAbsent(h.id(), k -> new ArrayList<>()).add(p);
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
      port(h, new Port(hand, near, List.of(pass), hole, false));
      return;
    }
    Hollow behind = blind.get(other);
    if (behind == null || s.kind() == SiteKind.PLATE_STACK) {
      return;
    }
    for (Accesses.Access a : accesses.in(other)) {
      List<Point3> path = Paths.inside(behind, a.at(), far);
      if (GraphDraft.lengthOf(path) <= HoleBook.ARM && Paths.clear(solids, path)) {
        long price = prices.fishLeg(behind.kind(), behind.fill(), GraphDraft.lengthOf(path));
        RouteGraph.Piece reach = new RouteGraph.Piece.Leg(other, behind.kind(), path, false, price);
        port(h, new Port(a.node(), near, List.of(reach, pass), hole, false));
      }
    }
  }

  private void within(Hollow h) {
    List<Port> list = sorted(h);
    for (int i = 0; i < list.size(); i++) {
      for (int j = i + 1; j < list.size(); j++) {
        Port p = list.get(i);
        Port q = list.get(j);
        boolean sameHole = p.hole() >= 0 && p.hole() == q.hole();
        if (p.node() != q.node() && !sameHole) {
          List<Point3> path = path(h, p.entry(), q.entry());
          if (!path.isEmpty()) {
            List<RouteGraph.Piece> pieces = new ArrayList<>(p.lead());
            pieces.add(leg(h, path, p.access() || q.access()));
            pieces.addAll(reversed(q.lead()));
            draft.edge(
                p.node(),
                q.node(),
                pieces,
                holes(p.hole(), book.tube(h), q.hole()),
                OutdoorNet.dug(house, draft, prices, h),
                ways(h) | ways(p.lead()) | ways(q.lead()),
                false);
          }
        }
      }
    }
  }

  private List<Port> sorted(Hollow h) {
    List<Port> list = new ArrayList<>(ports.getOrDefault(h.id(), List.of()));
    list.sort(Comparator.comparingInt(Port::node).thenComparingInt(Port::hole));
    return list;
  }

  /** The path of a leg, empty when it is too long for a fish or something is in the way. */
  private List<Point3> path(Hollow h, Point3 from, Point3 to) {
    if (isDrawn(h)) {
      List<Point3> drawn = Conduits.path(house.framed(), h, from, to);
      return isInReach(h, drawn) ? drawn : List.of();
    }
    List<Point3> path = Paths.inside(h, from, to);
    if (!isInReach(h, path)) {
      return List.of();
    }
    if (Paths.clear(solids, path)) {
      return path;
    }
    // turning at the other corner, as the way back would: or it hung on which end is named first
    List<Point3> other = new ArrayList<>(Paths.inside(h, to, from));
    Collections.reverse(other);
    return Paths.clear(solids, other) && isInReach(h, other) ? other : List.of();
  }

  private boolean isInReach(Hollow h, List<Point3> path) {
    // A tube is as long as its parts, each of which can be drawn through: else it is no space.
    int goes = 1 + Conduits.pullBoxes(house.framed(), h);
    return GraphDraft.lengthOf(path) <= goes * FishLimits.most(h.kind(), h.fill());
  }

  /** Where a tube or an old cable runs nobody knows: its way is drawn, not looked for. */
  private static boolean isDrawn(Hollow h) {
    return h.kind().isDrawn();
  }

  /** From an opening to a bore within an arm's length no rod is needed: the hand is there. */
  private RouteGraph.Piece leg(Hollow h, List<Point3> path, boolean open) {
    boolean reached = open && GraphDraft.lengthOf(path) <= HoleBook.ARM;
    long price = leg(h, path) + (reached ? 0 : prices.fishSetUp());
    return new RouteGraph.Piece.Leg(h.id(), h.kind(), path, !reached, price);
  }

  private long leg(Hollow h, List<Point3> path) {
    long turns =
        h.kind() == HollowKind.CONDUIT
            ? prices.turns(Conduits.bends(house.framed(), h))
                + Conduits.pullBoxes(house.framed(), h) * prices.handOver()
            : 0;
    return turns + prices.fishLeg(h.kind(), h.fill(), GraphDraft.lengthOf(path));
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
    for (Port p : sorted(one)) {
      List<Point3> first = p.hole() == hole && hole >= 0 ? List.of() : path(one, p.entry(), s.a());
      if (first.isEmpty()) {
        continue;
      }
      for (Port q : sorted(other)) {
        boolean sameHole = hole >= 0 && q.hole() == hole || p.hole() >= 0 && p.hole() == q.hole();
        boolean fed = straight || p.access() || q.access();
        if (p.node() != q.node() && !sameHole && fed) {
          List<Point3> second = path(other, s.b(), q.entry());
          if (!second.isEmpty()) {
            edge(s, hole, p, q, one, other, first, second);
          }
        }
      }
    }
  }

  private void edge(
      Site s,
      int hole,
      Port p,
      Port q,
      Hollow one,
      Hollow other,
      List<Point3> first,
      List<Point3> second) {
    List<RouteGraph.Piece> pieces = new ArrayList<>(p.lead());
    pieces.add(
        new RouteGraph.Piece.Leg(
            one.id(), one.kind(), first, true, prices.fishSetUp() + leg(one, first)));
    pieces.add(new RouteGraph.Piece.Pass(s.id(), List.of(s.a(), s.b())));
    pieces.add(
        new RouteGraph.Piece.Leg(
            other.id(), other.kind(), second, true, prices.handOver() + leg(other, second)));
    pieces.addAll(reversed(q.lead()));
    draft.edge(
        p.node(),
        q.node(),
        pieces,
        holes(p.hole(), hole, q.hole()),
        new int[0],
        ways(one) | ways(other) | ways(p.lead()) | ways(q.lead()),
        false);
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

  private static int[] holes(int... ids) {
    return java.util.Arrays.stream(ids).filter(i -> i >= 0).toArray();
  }

  private static int ways(Hollow h) {
    return h.kind() == HollowKind.CHASE
        ? Way.CHASE.bit()
        : h.kind() == HollowKind.PORCH_VOID
            ? Way.OUTSIDE.bit()
            : h.kind() == HollowKind.JOIST_BAY ? Way.JOIST_BAYS.bit() : 0;
  }
}
