package holloway.hollow;

import holloway.framing.Attic;
import holloway.framing.Member;
import holloway.framing.MemberKind;
import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Point2;
import holloway.geometry.Point3;
import holloway.house.Chase;
import holloway.house.Fact;
import holloway.house.Lining;
import holloway.survey.PlacedRoom;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Ways into, along and out of a chase: its floors, its top in the attic, the room or space under
 * it, and a patch from the room beside it.
 */
final class ChaseSites {
  private static final long FROM_SIDE = 30_000_000;
  private static final long STEP = 40_000_000;
  private static final long PATCH_HEIGHT = 500_000_000;
  private static final long CAP = 13_000_000;

  private final Draft draft;

  ChaseSites(Draft draft) {
    this.draft = draft;
  }

  void find(ChaseSpaces.Shaft shaft) {
    List<ChaseSpaces.Segment> segments = shaft.segments();
    for (int i = 0; i < segments.size(); i++) {
      ChaseSpaces.Segment s = segments.get(i);
      if (i == 0) {
        under(shaft, s);
      } else {
        Hollow low = segments.get(i - 1).hollow();
        cross(
            shaft,
            s.level().name(),
            low.clear().z1(),
            s.hollow().clear().z0(),
            low.id(),
            s.hollow().id());
      }
      patch(shaft, s);
    }
    if (shaft.chase().to().equals("attic") && !segments.isEmpty()) {
      intoAttic(shaft, segments.get(segments.size() - 1).hollow());
    }
  }

  private List<Point2> spots(ChaseSpaces.Shaft shaft) {
    Box b = shaft.plan();
    List<Point2> out = new ArrayList<>();
    Point2 mid = new Point2((b.x0() + b.x1()) / 2, (b.y0() + b.y1()) / 2);
    out.add(mid);
    int u = Away.of(draft).alongU(Frame.WORLD);
    int v = Away.of(draft).alongV(Frame.WORLD);
    for (long x = FROM_SIDE; x <= b.x1() - b.x0() - FROM_SIDE; x += STEP) {
      for (long y = FROM_SIDE; y <= b.y1() - b.y0() - FROM_SIDE; y += STEP) {
        out.add(new Point2(Away.at(b.x0(), b.x1(), u, x), Away.at(b.y0(), b.y1(), v, y)));
      }
    }
    return out;
  }

  private static Chase.FloorPass pass(ChaseSpaces.Shaft shaft, String floor) {
    return Optional.ofNullable(shaft.chase().floors().get(floor))
        .map(Fact::value)
        .orElse(Chase.FloorPass.UNKNOWN);
  }

  /** What the foot of the shaft meets: a space worked from below, or the room under its floor. */
  private void under(ChaseSpaces.Shaft shaft, ChaseSpaces.Segment s) {
    String floor = s.level().name();
    long z1 = s.hollow().clear().z0();
    Point2 mid = spots(shaft).get(0);
    for (Hollow h : draft.hollows.values()) {
      boolean below =
          (h.id().startsWith("crawlspace/") || UnderJoists.is(h.id()))
              && Math.abs(h.clear().z1() - z1) < 60_000_000;
      if (below && h.area().orElseThrow().contains(mid)) {
        cross(shaft, floor, h.clear().z1(), z1, h.id(), s.hollow().id());
        return;
      }
    }
    for (PlacedRoom r : draft.framed.placed().rooms()) {
      boolean below = s.level().isNextOver(draft.framed.placed().getLevel(r.room().level()));
      if (below && r.room().ceiling() != Lining.OPEN && r.outline().contains(mid)) {
        cross(shaft, floor, r.ceilingZ(), z1, RoomSpaces.surface(r.name()), s.hollow().id());
      }
    }
  }

  private void cross(
      ChaseSpaces.Shaft shaft, String floor, long z0, long z1, String hollowA, String hollowB) {
    Chase.FloorPass pass = pass(shaft, floor);
    SiteKind kind =
        hollowA.endsWith("/surface") ? SiteKind.CEILING_AND_FLOOR : SiteKind.CHASE_FLOOR;
    boolean open = pass == Chase.FloorPass.OPEN || pass == Chase.FloorPass.GAP;
    List<Point3[]> axes = new ArrayList<>();
    for (Point2 p : spots(shaft)) {
      axes.add(new Point3[] {p.at(z0), p.at(z1)});
    }
    String what = "chase/" + shaft.chase().name() + "/" + (open ? "way-" : "floor-") + floor;
    Optional<Site> site =
        draft.bores.best("?", open ? SiteKind.OPENING : kind, axes, hollowA, hollowB);
    if (site.isEmpty()) {
      draft.refuse(
          "floor of chase " + shaft.chase().name() + " at " + floor,
          axes.get(0)[0],
          draft.bores.lastReason(),
          "framing");
      return;
    }
    Site s = site.get();
    boolean unsure = s.assumed() || pass == Chase.FloorPass.UNKNOWN || !shaft.chase().known();
    draft.keep(
        new Site(
            what,
            open ? SiteKind.OPENING : kind,
            s.a(),
            s.b(),
            hollowA,
            hollowB,
            s.pierces(),
            s.layers(),
            s.largestBit(),
            s.platedBit(),
            open,
            unsure));
  }

  /**
   * The board that closes the top is a shaft's own, or the ceiling of the room it is boxed into;
   * only what lies above it can be in the way.
   */
  private void intoAttic(ChaseSpaces.Shaft shaft, Hollow top) {
    Chase.FloorPass pass = pass(shaft, "attic");
    boolean open = pass == Chase.FloorPass.OPEN || pass == Chase.FloorPass.GAP;
    for (Attic a : draft.framed.attics()) {
      Optional<Hollow> attic = draft.find("attic/" + a.id());
      if (!a.outline().contains(spots(shaft).get(0)) || attic.isEmpty()) {
        continue;
      }
      for (Point2 p : spots(shaft)) {
        boolean reached = attic.get().area().orElseThrow().contains(p);
        Point3 over = p.at(a.plateZ() + 1_000_000);
        if (reached && draft.solids.free(over, p.at(a.chordTopZ() + 60_000_000), 16_000_000)) {
          boolean unsure = pass == Chase.FloorPass.UNKNOWN || !shaft.chase().known();
          draft.keep(top(shaft, top, attic.get(), p.at(a.plateZ()), open, unsure));
          return;
        }
      }
      draft.refuse(
          "top of chase " + shaft.chase().name(),
          spots(shaft).get(0).at(a.plateZ()),
          "out of arm's reach in the attic, or a chord lies across it",
          "from experience");
    }
  }

  private Site top(
      ChaseSpaces.Shaft shaft, Hollow low, Hollow attic, Point3 at, boolean open, boolean unsure) {
    Optional<Member> ceiling = ceilingUnder(at);
    long thick = ceiling.map(m -> at.z() - m.box().z0()).orElse(CAP);
    String board = ceiling.isPresent() ? "lining" : "closing board";
    return new Site(
        "chase/" + shaft.chase().name() + (open ? "/way-attic" : "/cap-attic"),
        open ? SiteKind.OPENING : SiteKind.CHASE_FLOOR,
        at.withZ(at.z() - thick),
        at,
        low.id(),
        attic.id(),
        ceiling.map(Member::id).stream().toList(),
        List.of(new Site.Layer(open ? "opening" : board, thick)),
        51,
        51,
        open,
        unsure);
  }

  /** The ceiling board of the room a shaft is boxed into, right under a point on the plates. */
  private Optional<Member> ceilingUnder(Point3 at) {
    long z = at.z() - 5_000_000;
    return draft.framed.members().stream()
        .filter(m -> m.kind() == MemberKind.LINING && m.frame().equals(Frame.WORLD))
        .filter(m -> m.box().x().contains(at.x()) && m.box().y().contains(at.y()))
        .filter(m -> m.box().z().contains(z))
        .findFirst();
  }

  private void patch(ChaseSpaces.Shaft shaft, ChaseSpaces.Segment s) {
    PlacedRoom beside = draft.framed.placed().getRoom(shaft.chase().beside().room());
    if (beside.room().level().equals(s.level().name())) {
      Box b = s.hollow().clear();
      Point3 at =
          new Point3(
              (b.x0() + b.x1()) / 2,
              (b.y0() + b.y1()) / 2,
              Math.min(b.z1(), b.z0() + PATCH_HEIGHT));
      draft.accesses.add(
          new AccessPlace(
              s.hollow().id() + "/wall-patch",
              s.hollow().id(),
              at,
              beside.name(),
              AccessPlace.Kind.WALL_PATCH,
              beside.room().walls()));
    }
  }
}
