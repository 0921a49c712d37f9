package holloway.hollow;

import holloway.framing.Lowered;
import holloway.geometry.Box;
import holloway.geometry.Interval;
import holloway.geometry.Point3;
import holloway.survey.PlacedRoom;
import holloway.survey.Wall;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Ways through the walls that a lowered ceiling meets: through the board into a stud bay, and right
 * through into another lowered ceiling or a plain room on the far side.
 */
final class LoweredWallSites {
  private static final long[] ASIDE = {0, 50_000_000, -50_000_000, 100_000_000, -100_000_000};

  /** A bore keeps this off plates, ceilings and the underside of the box. */
  private static final long EDGE = 30_000_000;

  private static final long FROM_END = 80_000_000;

  /** A void ends at a wall when it comes so near to its face. */
  private static final long TOUCH = 5_000_000;

  private final Draft draft;
  private final List<Interest> interests;

  LoweredWallSites(Draft draft, List<Interest> interests) {
    this.draft = draft;
    this.interests = interests;
  }

  /** Where a lowered ceiling meets a face: along it, and the height of its void there. */
  private record Meeting(Lowered lowered, Wall wall, Wall.WallFace face, Interval s, Interval z) {
    long t() {
      return face.side() == 0 ? 0 : wall.thickness();
    }
  }

  void find() {
    List<Meeting> all = new ArrayList<>();
    draft.lowered().stream()
        .filter(l -> draft.find(l.id()).isPresent())
        .forEach(l -> all.addAll(meetings(l)));
    for (Meeting m : all) {
      intoBays(m);
      for (Meeting o : all) {
        if (o.wall() == m.wall() && m.face().side() == 0 && o.face().side() == 1) {
          through(m, o);
        }
      }
      for (Wall.WallFace g : m.wall().faces()) {
        if (g.side() != m.face().side()) {
          intoPlainRoom(m, g);
        }
      }
    }
  }

  /** Every face that the void touches: along its length, at its ends, or all round a room. */
  private List<Meeting> meetings(Lowered l) {
    List<Meeting> out = new ArrayList<>();
    for (Wall w : draft.framed.placed().walls()) {
      Box at = local(l, w);
      for (Wall.WallFace f : w.faces()) {
        long gap = f.side() == 0 ? -at.y1() : at.y0() - w.thickness();
        boolean touches = l.area().isPresent() || Math.abs(gap) <= TOUCH;
        if (touches && f.room().equals(l.soffit().room())) {
          f.s()
              .cut(l.area().isPresent() ? f.s() : at.x())
              .filter(s -> s.length() > 2 * FROM_END)
              .ifPresent(s -> out.add(new Meeting(l, w, f, s, at.z())));
        }
      }
    }
    return out;
  }

  /** The void's box in a wall's frame. */
  private static Box local(Lowered l, Wall w) {
    Box c = l.clear();
    Point3 p = w.frame().toLocal(l.frame().toWorld(c.x0(), c.y0(), c.z0()));
    Point3 q = w.frame().toLocal(l.frame().toWorld(c.x1(), c.y1(), c.z1()));
    return new Box(
        Math.min(p.x(), q.x()),
        Math.max(p.x(), q.x()),
        Math.min(p.y(), q.y()),
        Math.max(p.y(), q.y()),
        Math.min(p.z(), q.z()),
        Math.max(p.z(), q.z()));
  }

  private void intoBays(Meeting m) {
    for (Hollow bay : BoardVoids.behind(draft, m.wall(), m.face().side())) {
      Box b = bay.clear();
      Optional<Interval> s = m.s().cut(b.x()).filter(i -> i.length() >= 60_000_000);
      Optional<Interval> z = m.z().cut(b.z()).filter(i -> i.length() > 2 * EDGE);
      if (s.isPresent() && z.isPresent()) {
        intoBay(m, bay, s.get(), height(m, z.get()));
      }
    }
  }

  /** The middle of the void, or as near to it as the wall lets. */
  private static long height(Meeting m, Interval z) {
    return new Interval(z.lo() + EDGE, z.hi() - EDGE).clamp(m.z().mid());
  }

  private void intoBay(Meeting m, Hollow bay, Interval s, long z) {
    long in = BoardVoids.inside(bay, m.face().side());
    List<Point3[]> axes = new ArrayList<>();
    for (long aside : ASIDE) {
      long at = s.mid() + Away.of(draft).alongU(m.wall().frame()) * aside;
      if (at > s.lo() + 20_000_000 && at < s.hi() - 20_000_000) {
        axes.add(new Point3[] {m.wall().world(at, m.t(), z), m.wall().world(at, in, z)});
      }
    }
    String id = m.wall().id() + "/over-" + m.lowered().soffit().name() + "/";
    keep(id, SiteKind.WALL_BOARD, axes, m.lowered().id(), bay.id(), m.wall());
  }

  private void through(Meeting m, Meeting o) {
    Optional<Interval> s = m.s().cut(o.s()).filter(i -> i.length() > 2 * FROM_END);
    Optional<Interval> z = m.z().cut(o.z()).filter(i -> i.length() > 2 * EDGE);
    if (s.isPresent() && z.isPresent() && m.wall().isLow()) {
      new OverLowWalls(draft, interests)
          .pass(m.wall(), s.get(), z.get(), m.lowered().id(), o.lowered().id());
    } else if (s.isPresent() && z.isPresent()) {
      String id =
          m.wall().id() + "/" + m.lowered().soffit().name() + "-" + o.lowered().soffit().name();
      both(m.wall(), id + "/", s.get(), height(m, z.get()), m.lowered().id(), o.lowered().id());
    }
  }

  private void intoPlainRoom(Meeting m, Wall.WallFace g) {
    PlacedRoom room = draft.framed.placed().getRoom(g.room());
    Optional<Interval> s = m.s().cut(g.s()).filter(i -> i.length() > 2 * FROM_END);
    Optional<Interval> z =
        m.z()
            .cut(new Interval(g.floorZ(), Math.max(g.floorZ(), g.ceilingZ())))
            .filter(i -> i.length() > 2 * EDGE);
    if (room.room().plain() && s.isPresent() && z.isPresent()) {
      String surface = RoomSpaces.surface(g.room());
      boolean low = m.face().side() == 0;
      String id = m.wall().id() + "/over-" + m.lowered().soffit().name() + "-through/";
      both(
          m.wall(),
          id,
          s.get(),
          height(m, z.get()),
          low ? m.lowered().id() : surface,
          low ? surface : m.lowered().id());
    }
  }

  /** One bore near each end of the stretch that both sides share, and beside each wanted spot. */
  private void both(Wall w, String id, Interval s, long z, String low, String high) {
    SiteKind kind = w.isFramed() ? SiteKind.WALL_THROUGH : SiteKind.MASONRY;
    int away = Away.of(draft).alongU(w.frame());
    List<long[]> starts = new ArrayList<>();
    starts.add(new long[] {s.lo() + FROM_END, 1});
    starts.add(new long[] {s.hi() - FROM_END, -1});
    for (Interest i : interests) {
      i.onWall().filter(o -> o.wall() == w).ifPresent(o -> starts.add(new long[] {o.s(), away}));
    }
    for (long[] start : starts) {
      List<Point3[]> axes = new ArrayList<>();
      for (long step = 0; step < Math.min(s.length(), 1_500_000_000L); step += 60_000_000) {
        long at = start[0] + start[1] * step;
        if (at >= s.lo() + FROM_END && at <= s.hi() - FROM_END) {
          axes.add(new Point3[] {w.world(at, 0, z), w.world(at, w.thickness(), z)});
        }
      }
      keep(id, kind, axes, low, high, w);
    }
  }

  private void keep(String id, SiteKind kind, List<Point3[]> axes, String a, String b, Wall w) {
    draft
        .bores
        .best("?", kind, axes, a, b)
        .ifPresent(
            s -> {
              String named = id + Tags.of(w.frame().toLocal(s.a()).x());
              if (!draft.has(named)) {
                draft.keep(s.named(named));
              }
            });
  }
}
