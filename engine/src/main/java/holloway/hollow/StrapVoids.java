package holloway.hollow;

import holloway.framing.Member;
import holloway.framing.MemberKind;
import holloway.framing.StrapVoid;
import holloway.geometry.Box;
import holloway.geometry.Interval;
import holloway.geometry.Point3;
import holloway.geometry.Polygon2;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The bays between the straps of a strapped ceiling: they pass below the joists, and each stands
 * open to every joist bay that it passes under.
 */
final class StrapVoids {
  /** The cable of a joist bay comes down so near over the joists' lower edge. */
  private static final long OVER = 5_000_000;

  /** A fish is swept with the radius of a thick cable. */
  private static final long LEAST = 9_000_000;

  private StrapVoids() {}

  static void find(Draft draft) {
    List<Member> shut = draft.framed.members().stream().filter(StrapVoids::shuts).toList();
    for (StrapVoid v : StrapVoid.of(draft.framed.placed(), draft.framed.decks())) {
      if (!v.bays().isEmpty() && v.depth() < LEAST) {
        draft.refuse(
            "strapped ceiling of " + v.room().name(),
            v.frame().toWorld(v.bays().get(0).centre()),
            "a void under 9 mm deep is not fished",
            "from experience");
        continue;
      }
      for (Box b : v.bays()) {
        List<Interval> closed = new ArrayList<>();
        shut.forEach(m -> JoistBays.closedBy(v.frame(), b.z(), m, b.y()).ifPresent(closed::add));
        for (Interval u : b.x().without(closed, JoistBays.SHORTEST)) {
          Box clear = new Box(u.lo(), u.hi(), b.y0(), b.y1(), b.z0(), b.z1());
          bay(draft, v, clear);
        }
      }
    }
  }

  private static boolean shuts(Member m) {
    return Neighbours.isTheirs(m)
        || m.kind() == MemberKind.OBSTACLE
        || m.kind() == MemberKind.BEAM
        || m.kind() == MemberKind.MASONRY;
  }

  private static void bay(Draft draft, StrapVoid v, Box clear) {
    String part = v.deck().id().endsWith("/floor") ? "" : v.deck().id() + "-";
    Hollow bay =
        new Hollow(
            v.room().name() + "/straps-" + part + Tags.of(clear.y0()) + "-" + Tags.of(clear.x0()),
            HollowKind.BATTEN_VOID,
            v.frame(),
            clear,
            Optional.empty(),
            v.deck().fill(),
            v.room().name(),
            Optional.empty());
    draft.hollow(bay);
    for (Hollow over : draft.ofKind(HollowKind.JOIST_BAY)) {
      if (over.owner().equals(v.deck().id())) {
        Polygon2 local = Scan.toLocal(plan(over), v.frame());
        Optional<Interval> u = local.xRange().cut(clear.x()).filter(StrapVoids::isWide);
        Optional<Interval> w = local.yRange().cut(clear.y()).filter(StrapVoids::isWide);
        if (u.isPresent() && w.isPresent()) {
          open(draft, bay, over, v.frame().toWorld(u.get().mid(), w.get().mid(), clear.z().mid()));
        }
      }
    }
  }

  private static boolean isWide(Interval i) {
    return i.length() >= JoistBays.NARROWEST;
  }

  private static Polygon2 plan(Hollow h) {
    Box c = h.clear();
    return new Polygon2(
        List.of(
            h.frame().toWorld(c.x0(), c.y0(), 0).plan(),
            h.frame().toWorld(c.x1(), c.y0(), 0).plan(),
            h.frame().toWorld(c.x1(), c.y1(), 0).plan(),
            h.frame().toWorld(c.x0(), c.y1(), 0).plan()));
  }

  /** Nothing lies between a joist bay and the strap bay below it. */
  private static void open(Draft draft, Hollow below, Hollow bay, Point3 at) {
    Point3 up = at.withZ(bay.frame().origin().z() + bay.clear().z0() + OVER);
    draft.keep(
        new Site(
            below.id() + "/open-" + Tags.of(bay.clear().y0()) + "-" + Tags.of(bay.clear().x0()),
            SiteKind.OPENING,
            up,
            at,
            bay.id(),
            below.id(),
            List.of(),
            List.of(new Site.Layer("opening", up.distanceTo(at))),
            51,
            51,
            true,
            true));
  }
}
