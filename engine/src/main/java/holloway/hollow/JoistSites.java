package holloway.hollow;

import holloway.framing.Deck;
import holloway.framing.Lowered;
import holloway.geometry.Box;
import holloway.geometry.Interval;
import holloway.geometry.Point3;
import holloway.geometry.Polygon2;
import holloway.house.Lining;
import holloway.survey.PlacedRoom;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;

/**
 * Bores through joists of closed floors, on the centreline at three tenths of the stretch over each
 * room (lawful in the us and the uk pack), bores through blocking, and the places where a ceiling
 * could be patched or boards lifted to get at a bay.
 */
final class JoistSites {
  /** Places in a bay that lie nearer to each other have one name. */
  private static final long SAME = 10_000_000;

  private static final long FROM_WALL = 160_000_000;
  private static final long LEAST = 350_000_000;
  private static final long STEP = 150_000_000;

  private final Draft draft;

  JoistSites(Draft draft) {
    this.draft = draft;
  }

  void find() {
    for (Deck d : draft.framed.decks()) {
      List<Hollow> bays =
          new ArrayList<>(
              draft.ofKind(HollowKind.JOIST_BAY).stream()
                  .filter(h -> h.owner().equals(d.id()))
                  .toList());
      bays.sort(
          Comparator.comparingLong((Hollow h) -> h.clear().y0())
              .thenComparingLong(h -> h.clear().x0()));
      List<PlacedRoom> below =
          JoistBays.roomsBelow(draft.framed, d).stream()
              .filter(r -> r.room().ceiling() != Lining.OPEN)
              .toList();
      List<PlacedRoom> on =
          draft.framed.placed().rooms().stream()
              .filter(r -> r.room().level().equals(d.level()))
              .toList();
      for (Hollow one : bays) {
        openEnds(d, one);
        for (Hollow other : bays) {
          joists(d, one, other, below);
          blocking(d, one, other);
        }
        below.stream()
            .filter(r -> !isLowered(draft, r))
            .forEach(r -> places(draft, one, r, AccessPlace.Kind.CEILING_PATCH));
        if (d.spec().boards()) {
          on.forEach(r -> places(draft, one, r, AccessPlace.Kind.LIFTED_BOARDS));
        }
      }
    }
  }

  /** Nobody patches a ceiling through another one that hangs below it. */
  static boolean isLowered(Draft draft, PlacedRoom r) {
    return Lowered.visibleCeiling(draft.framed.placed(), r) < r.ceilingZ();
  }

  /**
   * Joists that are bare over one room run on, closed, over the next: the end of the closed stretch
   * stands open to the hands below, unless the wall was filled between the joists (to be checked).
   */
  private void openEnds(Deck d, Hollow bay) {
    for (Hollow under : draft.hollows.values()) {
      if (!under.owner().equals(d.id()) || !UnderJoists.is(under.id())) {
        continue;
      }
      Box c = bay.clear();
      for (int way = -1; way <= 1; way += 2) {
        long end = way < 0 ? c.x0() : c.x1();
        Point3 in = d.frame().toWorld(end - way * 20_000_000L, c.y().mid(), c.z().mid());
        Point3 out = d.frame().toWorld(end + way * 30_000_000L, c.y().mid(), c.z().mid());
        boolean meets = under.area().orElseThrow().contains(out.plan());
        if (meets && draft.solids.free(in, out, 12_000_000)) {
          String id = bay.id() + "/open-end-" + Tags.of(end);
          List<Site.Layer> layers = List.of(new Site.Layer("opening", in.distanceTo(out)));
          draft.keep(
              new Site(
                  id,
                  SiteKind.OPENING,
                  in,
                  out,
                  bay.id(),
                  under.id(),
                  List.of(),
                  layers,
                  51,
                  51,
                  true,
                  true));
        }
      }
    }
  }

  /** Stretches of a bay's u over (or under) a room for the whole width of the bay. */
  private static List<Interval> over(Hollow bay, PlacedRoom room) {
    Polygon2 local = Scan.toLocal(room.outline(), bay.frame());
    List<Interval> out = new ArrayList<>();
    for (Interval i : Scan.along(local, bay.clear().y().mid())) {
      i.cut(bay.clear().x()).filter(c -> c.length() >= LEAST).ifPresent(out::add);
    }
    return out;
  }

  private static long lawfulSpot(Interval stretch, int away) {
    return Away.at(stretch.lo(), stretch.hi(), away, stretch.length() * 3 / 10);
  }

  private void joists(Deck d, Hollow one, Hollow other, List<PlacedRoom> below) {
    Box a = one.clear();
    Box b = other.clear();
    long gap = b.y0() - a.y1();
    if (gap <= 1_000_000 || gap > 100_000_000) {
      return;
    }
    for (PlacedRoom r : below) {
      for (Interval o : over(one, r)) {
        for (Interval p : over(other, r)) {
          o.cut(p).filter(c -> c.length() >= LEAST).ifPresent(c -> joist(d, one, other, c));
        }
      }
    }
  }

  private void joist(Deck d, Hollow one, Hollow other, Interval stretch) {
    Box a = one.clear();
    long z = (a.z0() + a.z1()) / 2;
    int away = Away.of(draft).alongU(d.frame());
    long first = lawfulSpot(stretch, away);
    List<Long> spots = new ArrayList<>(List.of(first));
    for (long off = STEP; off < stretch.length(); off += STEP) {
      spots.add(first + away * off);
      spots.add(first - away * off);
    }
    List<Point3[]> axes = new ArrayList<>();
    for (long u : spots) {
      if (u > stretch.lo() + FROM_WALL && u < stretch.hi() - FROM_WALL) {
        axes.add(
            new Point3[] {
              d.frame().toWorld(u, a.y1(), z), d.frame().toWorld(u, other.clear().y0(), z)
            });
      }
    }
    if (axes.isEmpty()) {
      return;
    }
    String id = d.id() + "/joist/" + Tags.of(a.y1()) + "-" + Tags.of(first);
    var site = draft.bores.best(id, SiteKind.JOIST, axes, one.id(), other.id());
    if (site.isPresent()) {
      draft.keep(site.get());
    } else {
      draft.refuse(
          "joist between " + one.id() + " and " + other.id(),
          axes.get(0)[0],
          draft.bores.lastReason(),
          "rule pack");
    }
  }

  private void blocking(Deck d, Hollow one, Hollow other) {
    Box a = one.clear();
    Box b = other.clear();
    long gap = b.x0() - a.x1();
    if (a.y0() != b.y0() || gap <= 1_000_000 || gap > 100_000_000) {
      return;
    }
    long z = (a.z0() + a.z1()) / 2;
    long v = a.y().mid();
    List<Point3[]> axes =
        List.<Point3[]>of(
            new Point3[] {d.frame().toWorld(a.x1(), v, z), d.frame().toWorld(b.x0(), v, z)});
    draft
        .bores
        .best(
            d.id() + "/blocking/" + Tags.of(a.y0()) + "-" + Tags.of(a.x1()),
            SiteKind.BLOCKING,
            axes,
            one.id(),
            other.id())
        .ifPresent(draft::keep);
  }

  /** Ascending; what would be as good as the same opening is one, and ids could not tell it. */
  private static TreeSet<Long> spots(Interval i, int away) {
    TreeSet<Long> out = new TreeSet<>(List.of(lawfulSpot(i, away)));
    long near = Away.at(i.lo(), i.hi(), away, FROM_WALL);
    long far = Away.at(i.lo(), i.hi(), -away, FROM_WALL);
    for (long u : new long[] {near, far}) {
      if (out.subSet(u - SAME, u + SAME).isEmpty()) {
        out.add(u);
      }
    }
    return out;
  }

  /** At both ends over the room, near its walls, and where its joists would be bored. */
  static void places(Draft draft, Hollow bay, PlacedRoom room, AccessPlace.Kind kind) {
    int away = Away.of(draft).alongU(bay.frame());
    for (Interval i : over(bay, room)) {
      for (long u : spots(i, away)) {
        Point3 at = bay.frame().toWorld(u, bay.clear().y().mid(), bay.clear().z().mid());
        if (kind == AccessPlace.Kind.CEILING_PATCH && draft.isUnderBeam(room, at.plan())) {
          continue;
        }
        String what = kind == AccessPlace.Kind.CEILING_PATCH ? "ceiling-patch" : "lifted-boards";
        Lining lining =
            kind == AccessPlace.Kind.CEILING_PATCH ? room.room().ceiling() : Lining.PANEL;
        draft.accesses.add(
            new AccessPlace(
                bay.id() + "/" + what + "-" + Tags.of(u), bay.id(), at, room.name(), kind, lining));
      }
    }
  }
}
