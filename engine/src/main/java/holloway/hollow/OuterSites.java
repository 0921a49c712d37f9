package holloway.hollow;

import holloway.framing.Deck;
import holloway.geometry.Box;
import holloway.geometry.Point2;
import holloway.geometry.Point3;
import holloway.house.Conduit;
import holloway.house.WallSpot;
import holloway.survey.OnWall;
import holloway.survey.PlacedRoom;
import holloway.survey.Wall;
import java.util.ArrayList;
import java.util.List;

/**
 * Ways in from outside near a wanted spot: through the skin into its bay, through the whole wall
 * into the room, and through the rim under the floor.
 */
final class OuterSites {
  private static final long[] ASIDE = {
    0,
    60_000_000,
    -60_000_000,
    120_000_000,
    -120_000_000,
    200_000_000,
    -200_000_000,
    300_000_000,
    -300_000_000
  };

  private static final long FROM_CORNER = 400_000_000;
  private static final long ENTRY_HEIGHT = 450_000_000;

  /** Through a rim of 38 mm into the space below the joists, whose outline reaches up to it. */
  private static final long INTO_SPACE = 40_000_000;

  /** The same and on into a joist bay, which begins behind it: the bit has to come out inside. */
  private static final long INTO_BAY = 60_000_000;

  private final Draft draft;

  OuterSites(Draft draft) {
    this.draft = draft;
  }

  void find(List<Interest> interests) {
    plainRooms();
    for (Interest i : interests) {
      i.onWall().filter(w -> w.wall().isOuter()).ifPresent(w -> at(i.room(), w));
    }
    for (Conduit c : draft.framed.placed().house().conduits()) {
      if (c.outdoor().isPresent() && draft.find("conduit/" + c.name()).isPresent()) {
        for (WallSpot end : List.of(c.from(), c.to())) {
          OutdoorLinks.spot(draft.framed, end).ifPresent(w -> at(end.face().room(), w));
        }
      }
    }
  }

  /**
   * A garage or store shows its cables: it may be entered from outside near either end of a wall.
   */
  private void plainRooms() {
    for (Wall w : draft.framed.placed().walls()) {
      for (Wall.WallFace f : w.faces()) {
        PlacedRoom room = draft.framed.placed().getRoom(f.room());
        if (w.isOuter() && room.room().plain() && f.s().length() > 2 * FROM_CORNER) {
          for (long s : new long[] {f.s().lo() + FROM_CORNER, f.s().hi() - FROM_CORNER}) {
            through(w, s, f.floorZ() + ENTRY_HEIGHT, f.room());
          }
        }
      }
    }
  }

  private void through(Wall w, long at, long z, String room) {
    long out = w.outside() == 0 ? 0 : w.thickness();
    long in = w.outside() == 0 ? w.thickness() : 0;
    List<Point3[]> axes = new ArrayList<>();
    int away = Away.of(draft).alongU(w.frame());
    for (long aside : ASIDE) {
      long s = at + away * aside;
      axes.add(new Point3[] {w.world(s, out, z), w.world(s, in, z)});
    }
    SiteKind kind = w.isFramed() ? SiteKind.OUTER_THROUGH : SiteKind.MASONRY;
    keep(w, "outer", kind, axes, RoomSpaces.OUTSIDE, RoomSpaces.surface(room));
  }

  private void at(String room, OnWall spot) {
    Wall w = spot.wall();
    long out = w.outside() == 0 ? 0 : w.thickness();
    long in = w.outside() == 0 ? w.thickness() : 0;
    long coreOut = w.outside() == 0 ? w.core().lo() : w.core().hi();
    if (w.isFramed()) {
      for (Hollow bay : draft.ofKind(HollowKind.STUD_BAY)) {
        Box b = bay.clear();
        if (bay.owner().equals(w.id())
            && StudBays.isBehind(bay, w, w.outside())
            && b.x0() <= spot.s() + 200_000_000
            && b.x1() >= spot.s() - 200_000_000
            && b.z().contains(spot.z())) {
          List<Point3[]> axes = new ArrayList<>();
          for (long aside : ASIDE) {
            long s = spot.s() + Away.of(draft).alongU(w.frame()) * aside;
            if (s > b.x0() + 24_000_000 && s < b.x1() - 24_000_000) {
              axes.add(new Point3[] {w.world(s, out, spot.z()), w.world(s, coreOut, spot.z())});
            }
          }
          keep(w, "skin", SiteKind.OUTER_SKIN, axes, RoomSpaces.OUTSIDE, bay.id());
        }
      }
    }
    through(w, spot.s(), spot.z() + 60_000_000, room);
    rim(w, spot, room);
  }

  private void rim(Wall w, OnWall spot, String inside) {
    PlacedRoom room = draft.framed.placed().getRoom(inside);
    for (Deck d : draft.framed.decks()) {
      if (!d.level().equals(w.level())
          || Math.abs(d.frame().origin().z() - room.floorZ()) > 10_000_000) {
        continue;
      }
      long z = d.frame().origin().z() + d.joistZ().mid() - w.frame().origin().z();
      long core = w.outside() == 0 ? w.core().lo() : w.core().hi();
      List<Point3[]> far = throughRim(w, spot, core, z, INTO_SPACE);
      List<Point3[]> deep = throughRim(w, spot, core, z, INTO_BAY);
      for (Hollow h : draft.hollows.values()) {
        if (h.owner().equals(d.id()) && h.area().isPresent()) {
          var into = far.stream().filter(x -> isIn(h, x)).toList();
          keep(w, "rim", SiteKind.RIM, into, RoomSpaces.OUTSIDE, h.id());
        } else if (h.owner().equals(d.id()) && h.kind() == HollowKind.JOIST_BAY) {
          var into =
              deep.stream().filter(x -> PlateSites.inside(h, x[1].plan(), 5_000_000)).toList();
          keep(w, "rim", SiteKind.RIM, into, RoomSpaces.OUTSIDE, h.id());
        }
      }
    }
  }

  /** A space begins where such a bore ends: what lies a millimetre on is asked for. */
  private static boolean isIn(Hollow h, Point3[] axis) {
    double on = 1e6 / axis[0].distanceTo(axis[1]);
    Point2 end = axis[1].plan();
    long x = Math.round(on * (end.x() - axis[0].x()));
    long y = Math.round(on * (end.y() - axis[0].y()));
    return h.area().get().contains(end.plus(x, y));
  }

  private List<Point3[]> throughRim(Wall w, OnWall spot, long core, long z, long depth) {
    long behind = w.outside() == 0 ? core + depth : core - depth;
    int away = Away.of(draft).alongU(w.frame());
    List<Point3[]> axes = new ArrayList<>();
    for (long aside : ASIDE) {
      long s = spot.s() + away * aside;
      axes.add(new Point3[] {w.world(s, core, z), w.world(s, behind, z)});
    }
    return axes;
  }

  private void keep(Wall w, String what, SiteKind kind, List<Point3[]> axes, String a, String b) {
    draft
        .bores
        .best("?", kind, axes, a, b)
        .ifPresent(
            s -> {
              String id =
                  w.id()
                      + "/"
                      + what
                      + "/"
                      + Tags.of(w.frame().toLocal(s.a()).x())
                      + "-z"
                      + Tags.of(w.frame().toLocal(s.a()).z());
              if (!draft.has(id)) {
                draft.keep(s.named(id));
              }
            });
  }
}
