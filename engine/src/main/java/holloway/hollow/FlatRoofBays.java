package holloway.hollow;

import holloway.framing.FlatRoof;
import holloway.framing.Framed;
import holloway.framing.Member;
import holloway.framing.MemberKind;
import holloway.geometry.Box;
import holloway.geometry.Interval;
import holloway.geometry.Polygon2;
import holloway.house.Lining;
import holloway.survey.PlacedRoom;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The bays between the joists of a flat roof, along them only: those joists are not bored. */
final class FlatRoofBays {
  private static final long BESIDE = 10_000_000;

  private final Framed framed;

  FlatRoofBays(Framed framed) {
    this.framed = framed;
  }

  List<Hollow> bays() {
    List<Hollow> out = new ArrayList<>();
    for (FlatRoof r : FlatRoof.of(framed.placed(), framed.decks())) {
      Polygon2 local = Scan.toLocal(r.outline(), r.frame());
      List<Member> shut = framed.members().stream().filter(m -> shuts(r, m)).toList();
      for (int i = 0; i + 1 < r.joists().size(); i++) {
        long lo = r.joists().get(i).hi();
        Interval v = new Interval(lo, Math.max(lo, r.joists().get(i + 1).lo()));
        if (v.length() >= JoistBays.NARROWEST) {
          bays(r, local, v, shut, out);
        }
      }
    }
    return out;
  }

  private void bays(FlatRoof r, Polygon2 local, Interval v, List<Member> shut, List<Hollow> out) {
    for (Interval u : Scan.inside(local, v)) {
      List<Interval> closed = new ArrayList<>(bare(r, v));
      shut.forEach(m -> JoistBays.closedBy(r.frame(), r.z(), m, v).ifPresent(closed::add));
      for (Interval s : u.without(closed, JoistBays.SHORTEST)) {
        Box box = new Box(s.lo(), s.hi(), v.lo(), v.hi(), r.z().lo(), r.z().hi());
        out.add(
            new Hollow(
                r.id() + "/roof-bay-" + Tags.of(v.lo()) + "-" + Tags.of(s.lo()),
                HollowKind.JOIST_BAY,
                r.frame(),
                box,
                Optional.empty(),
                r.roof().fill(),
                r.id(),
                Optional.empty()));
      }
    }
  }

  private static boolean shuts(FlatRoof r, Member m) {
    return m.owner().equals(r.id()) && m.id().startsWith(r.id() + "/block-")
        || Neighbours.isTheirs(m)
        || m.kind() == MemberKind.OBSTACLE
        || m.kind() == MemberKind.MASONRY;
  }

  /** Over rooms without a ceiling nothing closes the bays. */
  private List<Interval> bare(FlatRoof r, Interval v) {
    List<Interval> out = new ArrayList<>();
    for (String name : r.rooms()) {
      PlacedRoom room = framed.placed().getRoom(name);
      if (room.room().ceiling() == Lining.OPEN) {
        for (Interval u : Scan.along(Scan.toLocal(room.outline(), r.frame()), v.mid())) {
          out.add(new Interval(u.lo() - BESIDE, u.hi() + BESIDE));
        }
      }
    }
    return out;
  }

  /** Where a ceiling could be patched to get at them. */
  static void places(Draft draft) {
    for (FlatRoof r : FlatRoof.of(draft.framed.placed(), draft.framed.decks())) {
      for (String name : r.rooms()) {
        PlacedRoom room = draft.framed.placed().getRoom(name);
        boolean closed = room.room().ceiling() != Lining.OPEN && !JoistSites.isLowered(draft, room);
        long gap = r.frame().origin().z() - room.ceilingZ();
        for (Hollow bay : draft.ofKind(HollowKind.JOIST_BAY)) {
          if (closed && gap < 80_000_000 && bay.owner().equals(r.id())) {
            JoistSites.places(draft, bay, room, AccessPlace.Kind.CEILING_PATCH);
          }
        }
      }
    }
  }
}
