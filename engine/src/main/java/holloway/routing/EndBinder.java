package holloway.routing;

import holloway.geometry.Box;
import holloway.geometry.Point3;
import holloway.hollow.Hollow;
import holloway.hollow.HollowHouse;
import holloway.hollow.Refused;
import holloway.hollow.Solids;
import holloway.hollow.WorkKind;
import holloway.house.Lining;
import holloway.house.WallSpec;
import holloway.request.Wishes;
import holloway.survey.OnWall;
import holloway.survey.Wall;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Lays the wanted ends over the house: nodes behind their cut-outs, and where each can be reached
 * by hand.
 */
final class EndBinder {
  private static final long OFF_FACE = 12_000_000;

  /** Of a wall that another one ends against: so far past its end its posts stand. */
  private static final long END = 110_000_000;

  private final HollowHouse house;
  private final GraphDraft draft;
  private final Prices prices;
  private final Accesses accesses;
  private final CeilingEnds ceilings;
  private final PorchEnds porches;
  private final BoxFit boxes;
  private final BaysBehind bays;
  private final HandStands stands;
  private final Wishes wishes;
  final List<Refused> refused = new ArrayList<>();

  /** Entries of hand hollows that come from ends, by hollow id. */
  final Map<String, List<Entry>> entries = new TreeMap<>();

  EndBinder(
      HollowHouse house,
      GraphDraft draft,
      Prices prices,
      Accesses accesses,
      Solids solids,
      HandStands stands,
      Wishes wishes) {
    this.house = house;
    this.stands = stands;
    this.wishes = wishes;
    this.draft = draft;
    this.prices = prices;
    this.accesses = accesses;
    this.boxes = new BoxFit(prices, house.framed().placed());
    this.bays = new BaysBehind(house);
    this.porches = new PorchEnds(house, draft, prices, accesses, refused, this::entry);
    this.ceilings = new CeilingEnds(house, draft, prices, accesses, solids, refused, this::entry);
  }

  void bind(Ends ends) {
    ends.spots()
        .forEach(
            (name, spots) -> {
              List<Integer> nodes = new ArrayList<>();
              for (int k = 0; k < spots.size(); k++) {
                String id = k == 0 ? name : name + "@" + (k + 1);
                Ends.EndSpot s = spots.get(k);
                if (s.under().isPresent()) {
                  nodes.add(porches.bind(id, s.under().get()));
                } else if (s.ceiling().isPresent()) {
                  ceilings.bind(id, s).ifPresent(nodes::add);
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

  /** Under a slope cable is clipped only as high as it lies under it all round the room. */
  private void onSurface(String id, String room, Entry e) {
    String surface = room + "/surface";
    boolean over =
        house
            .findHollow(surface)
            .filter(h -> e.at().z() > h.frame().origin().z() + h.clear().z1())
            .isPresent();
    if (over) {
      refused.add(
          new Refused(
              id, e.at(), "higher than cable is clipped under the slope of the room", "framing"));
    } else {
      entry(surface, e);
    }
  }

  private int onWall(String id, Ends.EndSpot spot, boolean cabinet) {
    OnWall s = spot.onWall().orElseThrow();
    long t = s.side() == 0 ? -OFF_FACE : s.wall().thickness() + OFF_FACE;
    Point3 face = s.wall().world(s.s(), t, s.z());
    if (s.wall().isParty()) {
      int node = shared(id, face, s.wall());
      if (cabinet && s.wall().traits().isSplit()) {
        onSurface(id, spot.room(), new Entry(node, face, true));
      }
      return node;
    }
    if (s.wall().kind() == WallSpec.Kind.GLAZED) {
      return glazed(id, face);
    }
    Optional<Hollow> bay = bay(s);
    Optional<Wall> ends = bay.flatMap(b -> sharedEnd(s.wall(), face, inside(s, b)));
    if (ends.isPresent()) {
      return shared(id, face, ends.get());
    }
    Optional<String> tooDeep =
        cabinet ? Optional.empty() : bay.flatMap(b -> boxes.findTooDeep(spot, b));
    if (tooDeep.isPresent()) {
      return onFace(id, spot.room(), face, tooDeep.get());
    }
    if (bay.isEmpty() || cabinet) {
      int node =
          cabinet || s.wall().isFramed()
              ? draft.node(id, face)
              : draft.node(id, face, box(id, spot));
      onSurface(id, spot.room(), new Entry(node, face, true));
      if (bay.isEmpty()) {
        refused.add(
            new Refused(
                id,
                face,
                s.wall().isFramed()
                    ? "no bay behind it within 90 mm: studs, a header or something solid stand"
                        + " there"
                    : "the wall is solid: no hollow behind it",
                "framing"));
        return node;
      }
      int behind = behind(id, spot, bay.get());
      joinFace(id, node, behind, face);
      return node;
    }
    int node = behind(id, spot, bay.get());
    int front = draft.node(id + "/face", face);
    onSurface(id, spot.room(), new Entry(front, face, true));
    joinFace(id, front, node, face);
    return node;
  }

  /** The node in the bay behind a cut-out; for the cabinet it is a place of its own. */
  private int behind(String id, Ends.EndSpot spot, Hollow bay) {
    OnWall s = spot.onWall().orElseThrow();
    Point3 p = inside(s, bay);
    long price = boxes.price(spot, bay, id.equals(Ends.CABINET));
    int work = draft.work(id + "/cut-out", WorkKind.CUT_OUT, price, 0, 0, "");
    if (FishLimits.most(bay.kind(), bay.fill()) == 0) {
      String fill = bay.fill().word();
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

  /** Where in its bay the box of a spot is. */
  private static Point3 inside(OnWall s, Hollow bay) {
    Box b = bay.clear();
    Point3 local = bay.frame().toLocal(s.wall().world(s.s(), 0, s.z()));
    long at = Math.max(b.x0() + BaysBehind.IN_BAY, Math.min(b.x1() - BaysBehind.IN_BAY, local.x()));
    return bay.frame().toWorld(at, (b.y0() + b.y1()) / 2, local.z());
  }

  /** The shared wall that ends against this one right here: its posts stand behind the box. */
  private Optional<Wall> sharedEnd(Wall own, Point3 face, Point3 in) {
    return house.framed().placed().walls().stream()
        .filter(w -> w.isParty() && !w.id().equals(own.id()))
        .filter(w -> isIn(w, w.frame().toLocal(face), w.frame().toLocal(in)))
        .findFirst();
  }

  private static boolean isIn(Wall w, Point3 a, Point3 b) {
    return Math.max(a.x(), b.x()) > -END
        && Math.min(a.x(), b.x()) < w.length() + END
        && Math.max(a.y(), b.y()) > 0
        && Math.min(a.y(), b.y()) < w.thickness()
        && a.z() > 0
        && a.z() < w.height();
  }

  /** A box in a solid wall is cut out like any other; a run that passes it has a hand there. */
  private int box(String id, Ends.EndSpot spot) {
    return draft.work(id + "/cut-out", WorkKind.CUT_OUT, boxes.price(spot), 0, 0, "");
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

  /**
   * The bay at a spot, or the nearest one that the outlet can move to; on masonry the void between
   * it and the board on that side, where there is one.
   */
  private Optional<Hollow> bay(OnWall s) {
    return bays.nearest(s).stream().findFirst();
  }

  /** A box that does not go in can still stand on the wall. */
  private int onFace(String id, String room, Point3 face, String why) {
    int node = draft.node(id, face);
    onSurface(id, room, new Entry(node, face, true));
    refused.add(new Refused(id, face, why, "from experience"));
    return node;
  }

  private int glazed(String id, Point3 face) {
    refused.add(
        new Refused(
            id, face, "the wall is glass: no hollow, no cut-out", "as stated in the house file"));
    return draft.node(id, face);
  }

  /**
   * An end on a wall shared with a neighbour: no cut-out, no cable clipped to it. Between split
   * levels only the cabinet hangs on the face; nothing goes in behind it.
   */
  private int shared(String id, Point3 face, Wall wall) {
    if (wall.traits().isSplit()) {
      refused.add(
          new Refused(
              id,
              face,
              "the wall stands between parts of the house with floors at different heights: what is"
                  + " in it is not known, so it is taken as shut",
              "house"));
      return draft.node(id, face);
    }
    refused.add(
        new Refused(
            id,
            face,
            "the wall is shared with somebody else (party wall): nothing is bored, cut into or"
                + " fixed in it",
            "as stated in the house file; what the law of party walls asks is for the neighbours"
                + " and the local authority"));
    return draft.node(id, face);
  }

  /** On the outside of a wall; one that hands do not reach from the ground wants a ladder. */
  private int outside(String id, OnWall s) {
    long t = s.wall().outside() == 0 ? -OFF_FACE : s.wall().thickness() + OFF_FACE;
    Point3 face = s.wall().world(s.s(), t, s.z());
    if (s.wall().isParty()) {
      return shared(id, face, s.wall());
    }
    int work =
        draft.work(
            id + "/cut-out", WorkKind.CUT_OUT, prices.cutOut(Lining.BOARD, false, true), 0, 0, "");
    Hollow outside = house.findHollow("outside/face").orElseThrow();
    int[] setUp = stands.at(outside, face, wishes).orElseThrow().works();
    int[] needs = IntStream.concat(Arrays.stream(setUp), IntStream.of(work)).toArray();
    int node = draft.node(id, face, needs);
    entry(outside.id(), new Entry(node, face, true));
    return node;
  }
}
