package holloway.hollow;

import holloway.geometry.Box;
import holloway.geometry.Interval;
import holloway.geometry.Point3;
import holloway.survey.PlacedRoom;
import holloway.survey.Wall;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Ways out from behind skirting: through the board above the plate into each bay, through the wall
 * to the skirting or the plain room beyond, and round the room's corners.
 */
final class SkirtingSites {
  /** Height of the bores over the floor: above the plate, below the top of the skirting. */
  private static final long HEIGHT = 62_000_000;

  private static final long[] ASIDE = {0, 50_000_000, -50_000_000, 100_000_000, -100_000_000};
  private static final long FROM_END = 80_000_000;

  /** Ends of two stretches so near to each other are one corner. */
  private static final long CORNER = 25_000_000;

  /** The two sides of a corner are two places. */
  private static final long APART = 3_000_000;

  private static final long CABLE = 4_500_000;

  /** Which of two the corner between them is told from: the longer one. */
  private static final Comparator<Hollow> LEADS =
      Comparator.comparingLong((Hollow h) -> -Math.round(h.clear().x().length() / 1e6))
          .thenComparing(Hollow::id);

  private final Draft draft;
  private final List<Interest> interests;

  SkirtingSites(Draft draft, List<Interest> interests) {
    this.draft = draft;
    this.interests = interests;
  }

  void find() {
    List<Hollow> all = draft.ofKind(HollowKind.SKIRTING);
    for (Hollow h : all) {
      for (Wall w : draft.framed.placed().walls()) {
        if (w.frame().equals(h.frame())) {
          intoBays(h, w);
          beyond(h, w, all);
        }
      }
      for (Hollow o : all) {
        if (o.owner().equals(h.owner()) && LEADS.compare(h, o) < 0) {
          corner(h, o);
        }
      }
    }
  }

  private static int side(Hollow h) {
    return h.clear().y0() < 0 ? 0 : 1;
  }

  private static long z(Hollow h) {
    return h.clear().z0() + HEIGHT;
  }

  private void intoBays(Hollow h, Wall w) {
    for (Hollow bay : BoardVoids.behind(draft, w, side(h))) {
      Box b = bay.clear();
      Optional<Interval> s = b.x().cut(h.clear().x()).filter(i -> i.length() >= 60_000_000);
      if (s.isPresent() && b.z().contains(z(h))) {
        intoBay(h, w, bay, s.get(), s.get().mid());
        for (Interest i : interests) {
          i.onWall()
              .filter(o -> o.wall() == w && BoardVoids.isVoid(bay) && s.get().contains(o.s()))
              .ifPresent(o -> intoBay(h, w, bay, s.get(), o.s()));
        }
      }
    }
  }

  private void intoBay(Hollow h, Wall w, Hollow bay, Interval s, long middle) {
    long face = side(h) == 0 ? 0 : w.thickness();
    long in = BoardVoids.inside(bay, side(h));
    List<Point3[]> axes = new ArrayList<>();
    for (long aside : ASIDE) {
      long at = middle + Away.of(draft).alongU(w.frame()) * aside;
      if (s.contains(at - 20_000_000) && s.contains(at + 20_000_000)) {
        axes.add(new Point3[] {w.world(at, face, z(h)), w.world(at, in, z(h))});
      }
    }
    keep(w.id() + "/behind-skirting-" + side(h) + "/", SiteKind.WALL_BOARD, axes, h, bay, w);
  }

  /** Through the wall, near each end of what both sides share. */
  private void beyond(Hollow h, Wall w, List<Hollow> all) {
    for (Wall.WallFace g : w.faces()) {
      if (g.side() == side(h)) {
        continue;
      }
      PlacedRoom room = draft.framed.placed().getRoom(g.room());
      List<Hollow> targets = new ArrayList<>();
      all.stream()
          .filter(o -> o.frame().equals(h.frame()) && o.owner().equals(g.room()) && side(h) == 0)
          .filter(o -> side(o) == 1)
          .forEach(targets::add);
      if (room.room().plain()) {
        draft.find(RoomSpaces.surface(g.room())).ifPresent(targets::add);
      }
      for (Hollow o : targets) {
        Interval far = o.kind() == HollowKind.SKIRTING ? o.clear().x() : g.s();
        h.clear()
            .x()
            .cut(far)
            .filter(s -> s.length() > 2 * FROM_END)
            .ifPresent(s -> through(h, o, w, s, Math.max(z(h), g.floorZ() + HEIGHT)));
      }
    }
  }

  private void through(Hollow h, Hollow o, Wall w, Interval s, long z) {
    if (z > h.clear().z1() - 10_000_000) {
      return;
    }
    SiteKind kind = w.isFramed() ? SiteKind.WALL_THROUGH : SiteKind.MASONRY;
    boolean low = side(h) == 0;
    for (boolean fromLow : new boolean[] {true, false}) {
      List<Point3[]> axes = new ArrayList<>();
      for (long step = FROM_END; step < Math.min(s.length(), 1_500_000_000L); step += 60_000_000) {
        long at = fromLow ? s.lo() + step : s.hi() - step;
        axes.add(new Point3[] {w.world(at, 0, z), w.world(at, w.thickness(), z)});
      }
      keep(w.id() + "/skirting-through/", kind, axes, low ? h : o, low ? o : h, w);
    }
  }

  private void keep(String id, SiteKind kind, List<Point3[]> axes, Hollow a, Hollow b, Wall w) {
    draft
        .bores
        .best("?", kind, axes, a.id(), b.id())
        .ifPresent(
            s -> {
              String named = id + Tags.of(w.frame().toLocal(s.a()).x());
              if (!draft.has(named)) {
                draft.keep(s.named(named));
              }
            });
  }

  private void corner(Hollow one, Hollow other) {
    for (long inset : new long[] {SkirtingSpaces.DEPTH / 2, 0}) {
      for (Point3 p : ends(one, inset)) {
        for (Point3 q : ends(other, inset == 0 ? 0 : inset + APART)) {
          String id = one.owner() + "/skirting-corner/" + Tags.of(p.x()) + "-" + Tags.of(p.y());
          boolean near = p.distanceTo(q) <= CORNER && !draft.has(id);
          if (near && draft.solids.free(p, q, CABLE)) {
            draft.keep(
                new Site(
                    id,
                    SiteKind.OPENING,
                    p,
                    q,
                    one.id(),
                    other.id(),
                    List.of(),
                    List.of(),
                    51,
                    51,
                    true,
                    false));
          }
        }
      }
    }
  }

  private static List<Point3> ends(Hollow h, long inset) {
    Box c = h.clear();
    long t = c.y().mid();
    return List.of(
        h.frame().toWorld(c.x0() + inset, t, z(h)), h.frame().toWorld(c.x1() - inset, t, z(h)));
  }
}
