package holloway.hollow;

import holloway.framing.Lowered;
import holloway.geometry.Box;
import holloway.geometry.Interval;
import holloway.geometry.Point2;
import holloway.geometry.Point3;
import holloway.house.Lining;
import holloway.survey.OnWall;
import holloway.survey.PlacedRoom;
import holloway.survey.Wall;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * Ways out of the void over a lowered ceiling: up through the ceiling over it, down through its own
 * underside by a wanted spot, and the patches by which a boarded one is opened.
 */
final class LoweredSites {
  private static final long FROM_END = 160_000_000;
  private static final long OFF_WALL = 60_000_000;
  private static final long STEP = 300_000_000;

  /** Cable clipped under it keeps this off its underside. */
  private static final long UNDER = 6_000_000;

  private final Draft draft;
  private final List<Interest> interests;

  LoweredSites(Draft draft, List<Interest> interests) {
    this.draft = draft;
    this.interests = interests;
  }

  void find() {
    for (Lowered l : draft.lowered()) {
      Optional<Hollow> h = draft.find(l.id());
      if (h.isPresent()) {
        PlacedRoom room = draft.framed.placed().getRoom(l.soffit().room());
        up(l, room);
        interests.forEach(i -> i.onWall().ifPresent(s -> down(l, room, i, s)));
        if (h.get().blind()) {
          patches(l, room);
        }
      }
    }
    new LoweredWallSites(draft, interests).find();
  }

  /** Every 300 mm along a box; over a whole ceiling the two ends of each joist bay and a cross. */
  private void up(Lowered l, PlacedRoom room) {
    CeilingBores bores = new CeilingBores(draft, room, l.id(), l.id() + "/ceiling/");
    if (l.area().isEmpty()) {
      List<Point2> line = new ArrayList<>();
      Box c = l.clear();
      int away = Away.of(draft).alongU(l.frame());
      for (long s = FROM_END; s < c.x().length() - FROM_END / 2; s += STEP) {
        long at = Away.at(c.x0(), c.x1(), away, s);
        line.add(l.frame().toWorld(at, c.y().mid(), 0).plan());
      }
      if (!line.isEmpty()) {
        bores.up(line);
      }
      return;
    }
    draft.looked.spots(l.id() + "/bays", () -> endsOfBays(room)).forEach(bores::up);
    Interval x = room.outline().xRange();
    Interval y = room.outline().yRange();
    Point2 mid = new Point2(x.mid(), y.mid());
    long on = Away.of(draft).alongU(l.frame()) * STEP;
    Point3 from = l.frame().toLocal(mid.at(0));
    bores.intoAttic(List.of(mid, l.frame().toWorld(from.x() + on, from.y(), 0).plan()));
  }

  private List<List<Point2>> endsOfBays(PlacedRoom room) {
    List<List<Point2>> out = new ArrayList<>();
    for (Hollow bay : draft.ofKind(HollowKind.JOIST_BAY)) {
      long mid = bay.clear().y().mid();
      for (Interval i : Scan.along(Scan.toLocal(room.outline(), bay.frame()), mid)) {
        i.cut(bay.clear().x())
            .filter(x -> x.length() > 2 * FROM_END)
            .ifPresent(
                x -> {
                  out.add(List.of(bay.frame().toWorld(x.lo() + FROM_END, mid, 0).plan()));
                  out.add(List.of(bay.frame().toWorld(x.hi() - FROM_END, mid, 0).plan()));
                });
      }
    }
    return out;
  }

  /** From a box on the wall below, straight up through the underside. */
  private void down(Lowered l, PlacedRoom room, Interest i, OnWall spot) {
    if (!i.room().equals(room.name()) || i.outside()) {
      return;
    }
    long depth = l.area().isPresent() ? OFF_WALL : Math.min(OFF_WALL, l.clear().y().length() / 2);
    long t = spot.side() == 0 ? -depth : spot.wall().thickness() + depth;
    Point2 p = spot.wall().world(spot.s(), t, 0).plan();
    long low = l.frame().origin().z() + l.shell().z0();
    long high = l.frame().origin().z() + l.clear().z0();
    if (!l.covers(p) || spot.wall().frame().origin().z() + spot.z() > low) {
      return;
    }
    String surface = RoomSpaces.surface(room.name());
    List<Point3[]> axes = List.<Point3[]>of(new Point3[] {p.at(low), p.at(high)});
    draft
        .bores
        .best("?", SiteKind.CEILING, axes, surface, l.id())
        .ifPresent(
            s ->
                draft.keep(
                    new Site(
                        l.id() + "/under/" + Tags.of(p.x()) + "-" + Tags.of(p.y()),
                        s.kind(),
                        p.at(low - UNDER),
                        s.b(),
                        surface,
                        l.id(),
                        s.pierces(),
                        s.layers(),
                        s.largestBit(),
                        s.platedBit(),
                        false,
                        s.assumed())));
  }

  /** Near both ends, and where a wanted spot lies on a wall beside it. */
  private void patches(Lowered l, PlacedRoom room) {
    Box c = l.clear();
    if (c.x().length() < 2 * FROM_END) {
      return;
    }
    TreeSet<Point3> spots = new TreeSet<>(ends(l));
    for (Interest i : interests) {
      i.onWall().flatMap(s -> beside(l, room, s)).ifPresent(spots::add);
    }
    for (Point3 p : spots) {
      Point3 at = l.frame().toWorld(p);
      Point3 named = l.area().isPresent() ? at : p;
      draft.accesses.add(
          new AccessPlace(
              l.id() + "/soffit-patch-" + Tags.of(named.x()) + "-" + Tags.of(named.y()),
              l.id(),
              at,
              room.name(),
              AccessPlace.Kind.CEILING_PATCH,
              Lining.BOARD));
    }
  }

  /** Half-way across a box or a ceiling, near both ends of it. */
  private static List<Point3> ends(Lowered l) {
    Box c = l.clear();
    List<Point3> out = new ArrayList<>();
    if (l.area().isEmpty()) {
      out.add(new Point3(c.x0() + FROM_END, c.y().mid(), c.z().mid()));
      out.add(new Point3(c.x1() - FROM_END, c.y().mid(), c.z().mid()));
      return out;
    }
    for (Interval i : Scan.along(Scan.toLocal(l.area().get(), l.frame()), c.y().mid())) {
      if (i.length() >= 2 * FROM_END) {
        out.add(new Point3(i.lo() + FROM_END, c.y().mid(), c.z().mid()));
        out.add(new Point3(i.hi() - FROM_END, c.y().mid(), c.z().mid()));
      }
    }
    return out;
  }

  /** The place in the void nearest to a spot on either face of a wall of this room. */
  private static Optional<Point3> beside(Lowered l, PlacedRoom room, OnWall spot) {
    for (Wall.WallFace f : spot.wall().faces()) {
      if (f.room().equals(room.name()) && f.s().contains(spot.s())) {
        long t = f.side() == 0 ? -FROM_END : spot.wall().thickness() + FROM_END;
        Point3 p = l.frame().toLocal(spot.wall().world(spot.s(), t, 0));
        Box c = l.clear();
        boolean near = l.area().isPresent() || c.x().contains(p.x());
        long y = l.area().isPresent() ? c.y().clamp(p.y()) : c.y().mid();
        return near
            ? Optional.of(
                new Point3(
                    new Interval(c.x0() + FROM_END, c.x1() - FROM_END).clamp(p.x()),
                    y,
                    c.z().mid()))
            : Optional.empty();
      }
    }
    return Optional.empty();
  }
}
