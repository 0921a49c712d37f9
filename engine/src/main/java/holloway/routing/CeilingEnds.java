package holloway.routing;

import holloway.framing.Attic;
import holloway.framing.Lowered;
import holloway.framing.MemberKind;
import holloway.framing.Skylights;
import holloway.geometry.Point2;
import holloway.geometry.Point3;
import holloway.hollow.Away;
import holloway.hollow.Hollow;
import holloway.hollow.HollowHouse;
import holloway.hollow.HollowKind;
import holloway.hollow.Refused;
import holloway.hollow.Solids;
import holloway.hollow.UnderJoists;
import holloway.hollow.WorkKind;
import holloway.survey.PlacedRoom;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;

/** Outlets in ceilings: what lies over them, or among the tiles of what hangs below. */
final class CeilingEnds {
  private final HollowHouse house;
  private final GraphDraft draft;
  private final Prices prices;
  private final Accesses accesses;
  private final Solids solids;
  private final List<Refused> refused;
  private final BiConsumer<String, Entry> entry;

  /**
   * @param refused takes what cannot be had
   * @param entry takes entries of hand hollows, by hollow id
   */
  CeilingEnds(
      HollowHouse house,
      GraphDraft draft,
      Prices prices,
      Accesses accesses,
      Solids solids,
      List<Refused> refused,
      BiConsumer<String, Entry> entry) {
    this.house = house;
    this.draft = draft;
    this.prices = prices;
    this.accesses = accesses;
    this.solids = solids;
    this.refused = refused;
    this.entry = entry;
  }

  /**
   * A ceiling outlet lies in the attic or in the joist bay over it, moved a little if a chord or
   * joist is in the way.
   */
  Optional<Integer> bind(String id, Ends.EndSpot spot) {
    PlacedRoom room = house.framed().placed().getRoom(spot.room());
    int work =
        draft.work(
            id + "/cut-out",
            WorkKind.CUT_OUT,
            prices.ceilingCutOut(layers(room, spot.ceiling().orElseThrow())),
            0,
            0,
            "");
    for (Point2 p : near(spot.ceiling().orElseThrow())) {
      Optional<Integer> node =
          room.outline().contains(p) && !Skylights.isOver(house.framed().placed(), room, p)
              ? over(id, room, p, work)
              : Optional.empty();
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

  /** What is cut there: one sheet of a ceiling that hangs lower, else each of the ceiling's own. */
  private int layers(PlacedRoom room, Point2 p) {
    boolean hung =
        Lowered.of(house.framed().placed()).stream()
            .anyMatch(l -> l.soffit().room().equals(room.name()) && l.covers(p));
    return hung ? 1 : Math.max(1, room.room().overhead().layers().size());
  }

  /**
   * The spot and places up to 120 mm aside, nearest first: a ceiling outlet may move that much. Of
   * two as near the first is the one that lies away from where layouts begin.
   */
  private List<Point2> near(Point2 p) {
    Away away = new Away(house.framed().placed().house().layout());
    List<Point2> out = new ArrayList<>();
    for (long off : new long[] {0, 40_000_000, 80_000_000, 120_000_000}) {
      out.add(away.plus(p, off, 0));
      out.add(away.plus(p, -off, 0));
      out.add(away.plus(p, 0, off));
      out.add(away.plus(p, 0, -off));
    }
    return out;
  }

  /** In what hangs below the ceiling there: among the tiles, or in the board of a soffit. */
  private Optional<Integer> lowered(String id, PlacedRoom room, Point2 p, int work) {
    for (Hollow h : house.hollows()) {
      boolean hangs = h.kind() == HollowKind.SOFFIT || h.kind() == HollowKind.LOWERED_CEILING;
      Point3 q = h.frame().toLocal(p.at(h.frame().origin().z()));
      if (hangs
          && h.owner().equals(room.name())
          && h.clear().x().contains(q.x())
          && h.clear().y().contains(q.y())) {
        Point3 at = p.at(h.frame().origin().z() + h.clear().z0());
        int node = draft.node(id, at, work);
        if (h.blind()) {
          String words = "the cut-out of " + id;
          accesses.add(new Accesses.Access(node, h.id(), at, "cut-out", words, new int[] {work}));
        } else {
          entry.accept(h.id(), new Entry(node, at, true));
        }
        return Optional.of(node);
      }
    }
    return Optional.empty();
  }

  /** A box wants 40 mm clear of the straps that carry its ceiling. */
  private boolean isUnderStrap(PlacedRoom room, Point2 p) {
    return room.room().overhead().straps().isPresent()
        && house.framed().membersOf(room.name()).stream()
            .filter(m -> m.kind() == MemberKind.BATTEN)
            .anyMatch(
                m -> {
                  Point3 q = m.frame().toLocal(p.at(m.frame().origin().z()));
                  return q.y() > m.box().y0() - 40_000_000
                      && q.y() < m.box().y1() + 40_000_000
                      && m.box().x().contains(q.x());
                });
  }

  private Optional<Integer> over(String id, PlacedRoom room, Point2 p, int work) {
    Optional<Integer> hung = lowered(id, room, p, work);
    if (hung.isPresent()) {
      return hung;
    }
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
        entry.accept(h.get().id(), new Entry(node, p.at(a.plateZ()), true));
        return Optional.of(node);
      }
    }
    for (Hollow h : house.hollows()) {
      long bottom = h.frame().origin().z() + h.clear().z0();
      boolean under = UnderJoists.is(h.id()) && UnderJoists.room(h.id()).equals(room.name());
      boolean bay =
          h.kind() == HollowKind.JOIST_BAY && Math.abs(bottom - room.ceilingZ()) < 80_000_000;
      if (under && h.area().orElseThrow().contains(p)) {
        int node = draft.node(id, p.at(room.ceilingZ()), work);
        entry.accept(h.id(), new Entry(node, p.at(room.ceilingZ()), true));
        return Optional.of(node);
      }
      Point3 q = h.frame().toLocal(p.at(h.frame().origin().z()));
      if (bay
          && !isUnderStrap(room, p)
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
