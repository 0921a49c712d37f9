package holloway.hollow;

import holloway.framing.Deck;
import holloway.framing.PorchLayout;
import holloway.geometry.Box;
import holloway.geometry.Interval;
import holloway.geometry.Point3;
import holloway.house.Porch;
import holloway.survey.PlacedPorch;
import holloway.survey.PlacedRoom;
import holloway.survey.Wall;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Ways from the house to the roof over a porch: through skin and ledger, out of a stud bay, a joist
 * bay or a room, into the bay before them; up through the boards from outside; and from the line of
 * cable on the wall to the undersides of bare joists.
 */
final class PorchSites {
  private static final long[] ASIDE = {
    0, 40_000_000, -40_000_000, 80_000_000, -80_000_000, 120_000_000, -120_000_000
  };

  /** A hole up through the boards is bored so far from the wall, as room for the drill. */
  private static final long OFF_WALL = 90_000_000;

  private static final long LINE = 12_000_000;
  private static final long STEP = 60_000_000;

  /** Through a rim and into the bay behind it. */
  private static final long INTO = 60_000_000;

  /** Room beside an axis in what it leads into. */
  private static final long BESIDE = 24_000_000;

  /** Walls whose outsides lie in one plane, give or take their claddings. */
  private static final long SAME_PLANE = 60_000_000;

  private final Draft draft;
  private final List<Interest> interests;

  PorchSites(Draft draft, List<Interest> interests) {
    this.draft = draft;
    this.interests = interests;
  }

  void find() {
    for (PorchLayout l : PorchLayout.of(draft.framed.placed())) {
      for (Box b : l.bays()) {
        Optional<Hollow> bay = draft.find(l.bay(b));
        boolean atWall =
            l.porch().porch().run().value() == Porch.Run.OUT || b.y0() <= l.porch().thick();
        if (bay.isPresent() && atWall) {
          into(l.porch(), bay.get(), along(l, b));
        }
      }
      draft.find(l.porch().space()).ifPresent(h -> edge(l.porch(), h));
    }
  }

  /** The stretch of the porch's wall that a bay lies before, in the porch's own frame. */
  private static Interval along(PorchLayout l, Box b) {
    boolean out = l.porch().porch().run().value() == Porch.Run.OUT;
    long whole = l.porch().length();
    return out ? new Interval(whole - b.y1(), whole - b.y0()) : b.x();
  }

  private void into(PlacedPorch p, Hollow bay, Interval x) {
    for (Wall w : draft.framed.placed().walls()) {
      if (w.isOuter() && isBehind(p, w)) {
        Interval s = onWall(p, w, x);
        skin(p, bay, w, s);
        through(p, bay, w, s);
      }
    }
    rims(p, bay, x);
    boards(p, bay, x);
  }

  /** A wall of any storey whose outside stands in the plane of the porch's wall. */
  private static boolean isBehind(PlacedPorch p, Wall w) {
    Point3 a = p.frame().toLocal(outside(w, 0, 0));
    Point3 b = p.frame().toLocal(outside(w, w.length(), 0));
    return Math.abs(a.y()) < SAME_PLANE
        && Math.abs(b.y()) < SAME_PLANE
        && (w.outside() == 1) == (p.wall().outside() == 1);
  }

  private static Point3 outside(Wall w, long s, long z) {
    return w.world(s, w.outside() == 0 ? 0 : w.thickness(), z);
  }

  private static Interval onWall(PlacedPorch p, Wall w, Interval x) {
    long a = w.frame().toLocal(p.frame().toWorld(x.lo(), 0, 0)).x();
    long b = w.frame().toLocal(p.frame().toWorld(x.hi(), 0, 0)).x();
    return new Interval(Math.min(a, b), Math.max(a, b));
  }

  /** Heights at which the ledger may be bored, the middle first, in the frame of a wall. */
  private static List<Long> heights(PlacedPorch p, long originZ) {
    long mid = p.frame().origin().z() + p.joists().mid() - originZ;
    return List.of(mid, mid - 10_000_000, mid + 10_000_000);
  }

  /** From behind the ledger, seen from the porch, to a place in the wall. */
  private static Point3 behindLedger(PlacedPorch p, Wall w, long s, long z) {
    Point3 at = p.frame().toLocal(w.world(s, 0, z));
    return p.frame().toWorld(at.x(), p.thick(), at.z());
  }

  private void skin(PlacedPorch p, Hollow bay, Wall w, Interval s) {
    if (!w.isFramed()) {
      return;
    }
    long core = w.outside() == 0 ? w.core().lo() : w.core().hi();
    for (Hollow stud : draft.ofKind(HollowKind.STUD_BAY)) {
      Optional<Interval> common =
          stud.owner().equals(w.id()) && StudBays.isBehind(stud, w, w.outside())
              ? stud.clear().x().cut(s)
              : Optional.empty();
      if (common.isPresent() && common.get().length() >= 2 * BESIDE) {
        List<Point3[]> axes = new ArrayList<>();
        for (long z : heights(p, w.frame().origin().z())) {
          for (long at : places(w, common.get())) {
            if (stud.clear().z().contains(z)) {
              axes.add(new Point3[] {behindLedger(p, w, at, z), w.world(at, core, z)});
            }
          }
        }
        keep(bay, "skin", SiteKind.OUTER_SKIN, axes, stud.id());
      }
    }
  }

  /** From the middle of a stretch outward, away from the corner that layouts begin at first. */
  private List<Long> places(Wall w, Interval s) {
    int away = Away.of(draft).alongU(w.frame());
    List<Long> out = new ArrayList<>();
    for (long aside : ASIDE) {
      long at = s.mid() + away * aside;
      if (at >= s.lo() + BESIDE && at <= s.hi() - BESIDE) {
        out.add(at);
      }
    }
    return out;
  }

  /** A room that shows its cables, or one in which something before this bay is wanted. */
  private void through(PlacedPorch p, Hollow bay, Wall w, Interval s) {
    long in = w.outside() == 0 ? w.thickness() : 0;
    for (Wall.WallFace f : w.faces()) {
      PlacedRoom room = draft.framed.placed().getRoom(f.room());
      boolean wanted = room.room().plain() || isWanted(p, bay);
      Optional<Interval> common = f.s().cut(s).filter(c -> c.length() >= 2 * BESIDE);
      if (wanted && common.isPresent() && f.side() != w.outside()) {
        List<Point3[]> axes = new ArrayList<>();
        for (long z : heights(p, w.frame().origin().z())) {
          if (z > f.floorZ() && z < f.ceilingZ() - BESIDE) {
            for (long at : places(w, common.get())) {
              axes.add(new Point3[] {behindLedger(p, w, at, z), w.world(at, in, z)});
            }
          }
        }
        SiteKind kind = w.isFramed() ? SiteKind.OUTER_THROUGH : SiteKind.MASONRY;
        keep(bay, "outer", kind, axes, RoomSpaces.surface(f.room()));
      }
    }
  }

  private boolean isWanted(PlacedPorch p, Hollow bay) {
    return interests.stream()
        .flatMap(i -> i.under().stream())
        .map(at -> bay.frame().toLocal(at.at(bay.frame().origin().z())))
        .anyMatch(q -> bay.clear().x().contains(q.x()) && nearBay(bay, q.y()));
  }

  /** An outlet that meets a joist moves to the bay beside it. */
  private static boolean nearBay(Hollow bay, long y) {
    return y > bay.clear().y0() - 2 * STEP && y < bay.clear().y1() + 2 * STEP;
  }

  private void rims(PlacedPorch p, Hollow bay, Interval x) {
    for (Deck d : draft.framed.decks()) {
      Interval z =
          new Interval(
              d.frame().origin().z() + d.joistZ().lo(), d.frame().origin().z() + d.joistZ().hi());
      List<Point3[]> axes = new ArrayList<>();
      for (long h : heights(p, 0)) {
        for (long at : places(p, x)) {
          Point3 a = p.frame().toWorld(at, p.thick(), h - p.frame().origin().z());
          if (z.contains(h)) {
            // through the wall's skin and the rim behind it
            long core =
                p.wall().outside() == 0
                    ? p.wall().core().lo()
                    : p.wall().thickness() - p.wall().core().hi();
            Point3 b = p.frame().toWorld(at, -core - INTO, h - p.frame().origin().z());
            axes.add(new Point3[] {a, b});
          }
        }
      }
      for (Hollow h : draft.hollows.values()) {
        if (h.owner().equals(d.id()) && h.kind() == HollowKind.JOIST_BAY) {
          List<Point3[]> in =
              axes.stream().filter(a -> PlateSites.inside(h, a[1].plan(), 5_000_000)).toList();
          keep(bay, "rim", SiteKind.RIM, in, h.id());
        }
      }
    }
  }

  private List<Long> places(PlacedPorch p, Interval x) {
    int away = Away.of(draft).alongU(p.frame());
    List<Long> out = new ArrayList<>();
    for (long aside : ASIDE) {
      long at = x.mid() + away * aside;
      if (at >= x.lo() + BESIDE && at <= x.hi() - BESIDE) {
        out.add(at);
      }
    }
    return out;
  }

  /** Up through the boards beside the wall, for cable that comes up the outside of it. */
  private void boards(PlacedPorch p, Hollow bay, Interval x) {
    if (!isWanted(p, bay)) {
      return;
    }
    List<Point3[]> axes = new ArrayList<>();
    for (long at : places(p, x)) {
      axes.add(
          new Point3[] {
            p.frame().toWorld(at, p.thick() + OFF_WALL, 0),
            p.frame().toWorld(at, p.thick() + OFF_WALL, p.joists().lo())
          });
    }
    draft
        .bores
        .best("?", SiteKind.CEILING, axes, RoomSpaces.OUTSIDE, bay.id())
        .ifPresent(s -> draft.keep(s.named(bay.id() + "/boards")));
  }

  private void keep(Hollow bay, String what, SiteKind kind, List<Point3[]> axes, String into) {
    draft
        .bores
        .best("?", kind, axes, bay.id(), into)
        .ifPresent(
            s -> {
              Point3 at = bay.frame().toLocal(s.b());
              String id = bay.id() + "/" + what + "-" + Tags.of(at.x()) + "-" + Tags.of(at.y());
              draft.keep(s.named(id));
            });
  }

  /** Where cable on the wall turns out along the joists: before each outlet, and at either end. */
  private void edge(PlacedPorch p, Hollow under) {
    List<Long> xs = new ArrayList<>(List.of(2 * STEP, p.length() - 2 * STEP));
    interests.stream()
        .flatMap(i -> i.under().stream())
        .map(at -> p.frame().toLocal(at.at(0)))
        .filter(q -> q.x() > 0 && q.x() < p.length() && q.y() > 0 && q.y() < p.out())
        .forEach(q -> xs.add(q.x()));
    for (long x : xs.stream().distinct().sorted().toList()) {
      Point3 a = p.frame().toWorld(x, LINE, -STEP);
      Point3 b = p.frame().toWorld(x, LINE + STEP, -STEP);
      String id = under.id() + "/edge-" + Tags.of(x);
      if (!draft.has(id)) {
        draft.keep(
            new Site(
                id,
                SiteKind.OPENING,
                a,
                b,
                RoomSpaces.OUTSIDE,
                under.id(),
                List.of(),
                List.of(new Site.Layer("opening", a.distanceTo(b))),
                51,
                51,
                true,
                false));
      }
    }
  }
}
