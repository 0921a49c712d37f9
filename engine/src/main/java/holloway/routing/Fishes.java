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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

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

  /** A blind hollow's ports in order, and what their fishes hang on. */
  private record Mouth(List<Port> ports, FishMemory.Side side) {}

  private final Map<String, Inside> inside = new HashMap<>();

  private final HollowHouse house;
  private final GraphDraft draft;
  private final Prices prices;
  private final FishPaths paths;
  private final Accesses accesses;
  private final HoleBook book;
  private final Map<String, List<Port>> ports = new HashMap<>();
  private final Map<String, Mouth> mouths = new HashMap<>();

  /** In the order of their ids, as the house lists them. */
  private final Map<String, Hollow> blind = new LinkedHashMap<>();

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

  void find(HandNodes handNodes) {
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
  private void side(Site s, String other, Point3 far, String id, Point3 near, HandNodes handNodes) {
    Hollow h = blind.get(id);
    if (h == null) {
      return;
    }
    int hole = book.of(s);
    if (hole == HoleBook.CANNOT) {
      return;
    }
    RouteGraph.Piece pass = new RouteGraph.Piece.Pass(s.id(), List.of(far, near));
    int hand = handNodes.at(s, other);
    if (hand >= 0) {
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
        long price = prices.fishLeg(behind.kind(), behind.fill(), Laid.lengthOf(path));
        RouteGraph.Piece reach = new RouteGraph.Piece.Leg(other, behind.kind(), path, false, price);
        port(h, a.node(), near, List.of(reach, pass), hole, false);
      }
    }
  }

  private void within(Hollow h) {
    Mouth m = mouth(h);
    boolean plain = !h.id().startsWith("conduit/") && h.kind() != HollowKind.OLD_CABLE;
    Inside in =
        memory.within(m.side(), plain, (i, j) -> fish(h, m.ports().get(i), m.ports().get(j)));
    inside.put(h.id(), in);
    List<FishMemory.Found> found = in.found();
    if (found.isEmpty()) {
      return; // a tube or a trench that nothing lies in is neither a hole nor dug
    }
    int tube = book.tube(h);
    int[] dug = OutdoorNet.dug(house, draft, prices, h);
    for (FishMemory.Found f : found) {
      Port p = m.ports().get(f.from());
      Port q = m.ports().get(f.to());
      draft.edge(
          p.node(),
          q.node(),
          f.fish().laid(),
          holes(p.hole(), tube, q.hole()),
          dug,
          f.fish().ways());
    }
  }

  /** Between two hands of one hollow; null where there is none. */
  private FishMemory.Fish fish(Hollow h, Port p, Port q) {
    if (p.node() == q.node() || p.hole() >= 0 && p.hole() == q.hole()) {
      return null;
    }
    List<Point3> path = paths.path(h, p.entry(), q.entry());
    if (path.isEmpty()) {
      return null;
    }
    List<RouteGraph.Piece> pieces = new ArrayList<>(p.lead());
    pieces.add(paths.leg(h, path, p.access() || q.access()));
    pieces.addAll(reversed(q.lead()));
    int ways = ways(h) | ways(p.lead()) | ways(q.lead());
    return new FishMemory.Fish(Laid.of(pieces), ways);
  }

  private Mouth mouth(Hollow h) {
    return mouths.computeIfAbsent(
        h.id(),
        id -> {
          List<Port> list = new ArrayList<>(ports.getOrDefault(id, List.of()));
          list.sort(Comparator.comparingInt(Port::node).thenComparingInt(Port::hole));
          return new Mouth(list, memory.side(h, list.stream().map(Port::hand).toList()));
        });
  }

  private void across(Site s) {
    Hollow one = blind.get(s.hollowA());
    Hollow other = blind.get(s.hollowB());
    int hole = one == null || other == null ? HoleBook.CANNOT : book.of(s);
    if (hole == HoleBook.CANNOT) {
      return;
    }
    Mouth here = mouth(one);
    Mouth there = mouth(other);
    Crossing c = new Crossing(s, hole, one, other);
    List<FishMemory.Found> found =
        memory.across(
            s,
            hole >= 0,
            here.side(),
            there.side(),
            inside.get(one.id()),
            inside.get(other.id()),
            (i, j) -> c.fish(here.ports().get(i), there.ports().get(j)));
    for (FishMemory.Found f : found) {
      Port p = here.ports().get(f.from());
      Port q = there.ports().get(f.to());
      int[] passed = holes(p.hole(), hole, q.hole());
      draft.edge(p.node(), q.node(), f.fish().laid(), passed, new int[0], f.fish().ways());
    }
  }

  /** A crossing between two blind hollows, with its hole or {@link HoleBook#NONE}. */
  private final class Crossing {
    private final Site site;
    private final int hole;
    private final Hollow one;
    private final Hollow other;
    private final boolean straight;

    /** Paths from a place in the first hollow, and to one in the other; each is looked for once. */
    private final Map<Point3, List<Point3>> first = new HashMap<>();

    private final Map<Point3, List<Point3>> second = new HashMap<>();

    Crossing(Site site, int hole, Hollow one, Hollow other) {
      this.site = site;
      this.hole = hole;
      this.one = one;
      this.other = other;
      straight =
          site.kind() == SiteKind.PLATE_STACK
              || site.kind() == SiteKind.BLOCK
              // a knockout lies across the bays: a rod does not turn into it
              || site.made() && site.pierces().isEmpty();
    }

    /** Between hands on either side; null where there is none. */
    FishMemory.Fish fish(Port p, Port q) {
      boolean sameHole =
          hole >= 0 && (p.hole() == hole || q.hole() == hole)
              || p.hole() >= 0 && p.hole() == q.hole();
      if (p.node() == q.node() || sameHole || !(straight || p.access() || q.access())) {
        return null;
      }
      List<Point3> in = first.computeIfAbsent(p.entry(), at -> paths.path(one, at, site.a()));
      if (in.isEmpty()) {
        return null;
      }
      List<Point3> on = second.computeIfAbsent(q.entry(), at -> paths.path(other, site.b(), at));
      if (on.isEmpty()) {
        return null;
      }
      int ways = ways(one) | ways(other) | ways(p.lead()) | ways(q.lead());
      List<RouteGraph.Piece> laid = pieces(site, p, q, one, other, in, on);
      return new FishMemory.Fish(Laid.of(laid), ways);
    }
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
