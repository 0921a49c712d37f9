package holloway.routing;

import holloway.framing.Attic;
import holloway.geometry.Box;
import holloway.geometry.Point2;
import holloway.geometry.Point3;
import holloway.hollow.Hollow;
import holloway.hollow.HollowHouse;
import holloway.hollow.HollowKind;
import holloway.hollow.Refused;
import holloway.hollow.Solids;
import holloway.hollow.WorkKind;
import holloway.house.Lining;
import holloway.survey.OnWall;
import holloway.survey.PlacedRoom;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Lays the wanted ends over the house: nodes behind their cut-outs, and where each can be reached
 * by hand.
 */
final class EndBinder {
  /** How far an outlet may move along its wall to miss a stud; the plan says by how much. */
  private static final long SHIFT = 90_000_000;

  private static final long IN_BAY = 25_000_000;
  private static final long OFF_FACE = 12_000_000;

  private final HollowHouse house;
  private final GraphDraft draft;
  private final Prices prices;
  private final Accesses accesses;
  private final Solids solids;
  final List<Refused> refused = new ArrayList<>();

  /** Entries of hand hollows that come from ends, by hollow id. */
  final Map<String, List<Entry>> entries = new TreeMap<>();

  EndBinder(HollowHouse house, GraphDraft draft, Prices prices, Accesses accesses, Solids solids) {
    this.house = house;
    this.draft = draft;
    this.prices = prices;
    this.accesses = accesses;
    this.solids = solids;
  }

  void bind(Ends ends) {
    ends.spots()
        .forEach(
            (name, spots) -> {
              List<Integer> nodes = new ArrayList<>();
              for (int k = 0; k < spots.size(); k++) {
                String id = k == 0 ? name : name + "@" + (k + 1);
                Ends.EndSpot s = spots.get(k);
                if (s.ceiling().isPresent()) {
                  ceiling(id, s).ifPresent(nodes::add);
                } else if (s.outside()) {
                  nodes.add(outside(id, s.onWall().orElseThrow()));
                } else {
                  nodes.add(onWall(id, s, name.equals(Ends.CABINET)));
                }
              }
              draft.terminals.put(name, List.copyOf(nodes));
            });
  }

  private void entry(String hollow, Entry e) {
    entries.computeIfAbsent(hollow, k -> new ArrayList<>()).add(e);
  }

  private int onWall(String id, Ends.EndSpot spot, boolean cabinet) {
    OnWall s = spot.onWall().orElseThrow();
    long t = s.side() == 0 ? -OFF_FACE : s.wall().thickness() + OFF_FACE;
    Point3 face = s.wall().world(s.s(), t, s.z());
    Optional<Hollow> bay = s.wall().isFramed() ? bay(s) : Optional.empty();
    if (bay.isEmpty() || cabinet) {
      int node =
          cabinet || s.wall().isFramed() ? draft.node(id, face) : draft.node(id, face, box(id, s));
      entry(spot.room() + "/surface", new Entry(node, face, true));
      if (bay.isEmpty()) {
        refused.add(
            new Refused(
                id,
                face,
                s.wall().isFramed()
                    ? "no bay behind it within 90 mm: studs, a header or something solid stand there"
                    : "the wall is solid: no hollow behind it",
                "framing"));
        return node;
      }
      int behind = behind(id, s, bay.get());
      joinFace(id, node, behind, face);
      return node;
    }
    int node = behind(id, s, bay.get());
    int front = draft.node(id + "/face", face);
    entry(spot.room() + "/surface", new Entry(front, face, true));
    joinFace(id, front, node, face);
    return node;
  }

  /** The node in the bay behind a cut-out; for the cabinet it is a place of its own. */
  private int behind(String id, OnWall s, Hollow bay) {
    Box b = bay.clear();
    Point3 local = bay.frame().toLocal(s.wall().world(s.s(), 0, s.z()));
    long at = Math.max(b.x0() + IN_BAY, Math.min(b.x1() - IN_BAY, local.x()));
    Point3 p = bay.frame().toWorld(at, (b.y0() + b.y1()) / 2, local.z());
    Lining lining = s.side() == 0 ? s.wall().lining0() : s.wall().lining1();
    int work =
        draft.work(
            id + "/cut-out", WorkKind.CUT_OUT, prices.cutOut(lining, false, false), 0, 0, "");
    if (FishLimits.most(bay.kind(), bay.fill()) == 0) {
      String fill = bay.fill().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
      refused.add(
          new Refused(
              id,
              p,
              "the " + bay.kind().word() + " behind it is no way on (" + fill + ")",
              "fish limits, from experience"));
    }
    String name = id.equals(Ends.CABINET) ? id + "/behind" : id;
    int node = draft.node(name, p, work);
    accesses.add(
        new Accesses.Access(
            node, bay.id(), p, "cut-out", "the cut-out of " + id, new int[] {work}));
    return node;
  }

  /** A box in a solid wall is cut out like any other; a run that passes it has a hand there. */
  private int box(String id, OnWall s) {
    Lining lining = s.side() == 0 ? s.wall().lining0() : s.wall().lining1();
    return draft.work(
        id + "/cut-out", WorkKind.CUT_OUT, prices.cutOut(lining, false, false), 0, 0, "");
  }

  private void joinFace(String id, int front, int behind, Point3 face) {
    Point3 in = draft.nodes.get(behind).at();
    List<Point3> path = List.of(face, in);
    draft.edge(
        front,
        behind,
        List.of(new RouteGraph.Piece.Pass(id + "/cut-out", path)),
        new int[0],
        draft.nodes.get(behind).works(),
        0,
        false);
  }

  /** The bay at a spot, or the nearest one that the outlet can move to. */
  private Optional<Hollow> bay(OnWall s) {
    Hollow best = null;
    long least = SHIFT + 1;
    for (Hollow h : house.hollows()) {
      if (h.kind() == HollowKind.STUD_BAY) {
        Point3 p = h.frame().toLocal(s.wall().world(s.s(), s.wall().core().mid(), s.z()));
        Box b = h.clear();
        boolean level =
            p.z() > b.z0() + 20_000_000
                && p.z() < b.z1() - 20_000_000
                && p.y() >= b.y0()
                && p.y() <= b.y1();
        long off = Math.max(0, Math.max(b.x0() + IN_BAY - p.x(), p.x() - b.x1() + IN_BAY));
        if (level && b.x().length() > 2 * IN_BAY && off < least) {
          best = h;
          least = off;
        }
      }
    }
    return Optional.ofNullable(best);
  }

  private int outside(String id, OnWall s) {
    long t = s.wall().outside() == 0 ? -OFF_FACE : s.wall().thickness() + OFF_FACE;
    Point3 face = s.wall().world(s.s(), t, s.z());
    int work =
        draft.work(
            id + "/cut-out", WorkKind.CUT_OUT, prices.cutOut(Lining.BOARD, false, true), 0, 0, "");
    int node = draft.node(id, face, work);
    entry("outside/face", new Entry(node, face, true));
    return node;
  }

  /**
   * A ceiling outlet lies in the attic or in the joist bay over it, moved a little if a chord or
   * joist is in the way.
   */
  private Optional<Integer> ceiling(String id, Ends.EndSpot spot) {
    PlacedRoom room = house.framed().placed().getRoom(spot.room());
    int work =
        draft.work(
            id + "/cut-out",
            WorkKind.CUT_OUT,
            prices.cutOut(room.room().ceiling(), true, false),
            0,
            0,
            "");
    for (Point2 p : near(spot.ceiling().orElseThrow())) {
      Optional<Integer> node =
          room.outline().contains(p) ? over(id, room, p, work) : Optional.empty();
      if (node.isPresent()) {
        return node;
      }
    }
    refused.add(
        new Refused(
            id,
            spot.ceiling().orElseThrow().at(room.ceilingZ()),
            "nothing over this ceiling that a hand or a fish gets to",
            "framing"));
    return Optional.of(draft.node(id, spot.ceiling().orElseThrow().at(room.ceilingZ()), work));
  }

  /** The spot and places up to 120 mm aside, nearest first: a ceiling outlet may move that much. */
  private static List<Point2> near(Point2 p) {
    List<Point2> out = new ArrayList<>();
    for (long off : new long[] {0, 40_000_000, 80_000_000, 120_000_000}) {
      out.add(p.plus(off, 0));
      out.add(p.plus(-off, 0));
      out.add(p.plus(0, off));
      out.add(p.plus(0, -off));
    }
    return out;
  }

  private Optional<Integer> over(String id, PlacedRoom room, Point2 p, int work) {
    for (Attic a : house.framed().attics()) {
      Optional<Hollow> h = house.findHollow("attic/" + a.id());
      boolean near =
          Math.abs(a.plateZ() - room.ceilingZ()) < 120_000_000 && a.outline().contains(p);
      if (near
          && h.isPresent()
          && h.get().area().orElseThrow().contains(p)
          && solids.free(
              p.at(a.plateZ() + 1_000_000), p.at(a.chordTopZ() + 60_000_000), 30_000_000)) {
        int node = draft.node(id, p.at(a.plateZ()), work);
        entry(h.get().id(), new Entry(node, p.at(a.plateZ()), true));
        return Optional.of(node);
      }
    }
    for (Hollow h : house.hollows()) {
      long bottom = h.frame().origin().z() + h.clear().z0();
      boolean under = h.id().equals("under/" + room.name());
      boolean bay =
          h.kind() == HollowKind.JOIST_BAY && Math.abs(bottom - room.ceilingZ()) < 80_000_000;
      if (under && h.area().orElseThrow().contains(p)) {
        int node = draft.node(id, p.at(room.ceilingZ()), work);
        entry(h.id(), new Entry(node, p.at(room.ceilingZ()), true));
        return Optional.of(node);
      }
      Point3 q = h.frame().toLocal(p.at(h.frame().origin().z()));
      if (bay
          && q.x() > h.clear().x0() + 40_000_000
          && q.x() < h.clear().x1() - 40_000_000
          && q.y() > h.clear().y0() + 40_000_000
          && q.y() < h.clear().y1() - 40_000_000) {
        Point3 at = h.frame().toWorld(q.x(), q.y(), h.clear().z0());
        int node = draft.node(id, at, work);
        accesses.add(
            new Accesses.Access(
                node, h.id(), at, "cut-out", "the cut-out of " + id, new int[] {work}));
        return Optional.of(node);
      }
    }
    return Optional.empty();
  }
}
