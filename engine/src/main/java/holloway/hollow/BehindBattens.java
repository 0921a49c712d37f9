package holloway.hollow;

import holloway.geometry.Box;
import holloway.geometry.Interval;
import holloway.geometry.Point3;
import holloway.survey.OnWall;
import holloway.survey.Wall;
import java.util.ArrayList;
import java.util.List;

/**
 * Holes through the lining behind a service layer, made through the cut-out of a box: from the void
 * before it into the stud bay, where cable comes down from the attic or up from below.
 */
final class BehindBattens {
  /** From the middle of the box: a bit beside the cable that lies there. */
  private static final long[] ASIDE = {0, 40_000_000, -40_000_000, 80_000_000, -80_000_000};

  private static final long[] UP = {0, 30_000_000, -30_000_000};
  private static final long EDGE = 20_000_000;

  /** How far a box may move along the wall to miss a batten. */
  private static final long SHIFT = 90_000_000;

  private BehindBattens() {}

  static void find(Draft draft, List<Interest> interests) {
    for (Interest i : interests) {
      i.onWall()
          .filter(s -> !i.outside() && s.wall().findBattens(s.side()).isPresent())
          .ifPresent(s -> behind(draft, s));
    }
  }

  private static void behind(Draft draft, OnWall s) {
    Wall w = s.wall();
    for (Hollow before : BoardVoids.behind(draft, w, s.side())) {
      Box v = before.clear();
      long box = new Interval(v.x0() + EDGE, Math.max(v.x0() + EDGE, v.x1() - EDGE)).clamp(s.s());
      if (Math.abs(box - s.s()) > SHIFT || !v.z().contains(s.z())) {
        continue;
      }
      for (Hollow bay : draft.ofKind(HollowKind.STUD_BAY)) {
        if (bay.owner().equals(w.id()) && isNext(bay, w, s.side())) {
          through(draft, s, box, before, bay);
        }
      }
    }
  }

  /** The row of bays that lies nearer to that side. */
  private static boolean isNext(Hollow bay, Wall w, int side) {
    return side == 0 ? bay.clear().y0() == w.core().lo() : bay.clear().y1() == w.core().hi();
  }

  private static void through(Draft draft, OnWall s, long box, Hollow before, Hollow bay) {
    Wall w = s.wall();
    long near = s.side() == 0 ? before.clear().y1() : before.clear().y0();
    long far = s.side() == 0 ? bay.clear().y0() : bay.clear().y1();
    int away = Away.of(draft).alongU(w.frame());
    List<Point3[]> axes = new ArrayList<>();
    for (long up : UP) {
      for (long aside : ASIDE) {
        long at = box + away * aside;
        long z = s.z() + up;
        if (within(before.clear(), at, z) && within(bay.clear(), at, z)) {
          axes.add(new Point3[] {w.world(at, near, z), w.world(at, far, z)});
        }
      }
    }
    draft
        .bores
        .best("?", SiteKind.WALL_BOARD, axes, before.id(), bay.id())
        .ifPresent(
            site -> {
              Point3 at = w.frame().toLocal(site.a());
              String id =
                  w.id()
                      + "/behind-battens-"
                      + s.side()
                      + "/"
                      + Tags.of(at.x())
                      + "-z"
                      + Tags.of(at.z());
              if (!draft.has(id)) {
                draft.keep(site.named(id));
              }
            });
  }

  private static boolean within(Box b, long s, long z) {
    return new Interval(b.x0() + EDGE, Math.max(b.x0() + EDGE, b.x1() - EDGE)).contains(s)
        && b.z().contains(z - EDGE)
        && b.z().contains(z + EDGE);
  }
}
