package holloway.hollow;

import holloway.framing.Deck;
import holloway.geometry.Interval;
import holloway.geometry.Point2;
import holloway.geometry.Point3;
import holloway.survey.OnWall;
import holloway.survey.PlacedRoom;
import java.util.ArrayList;
import java.util.List;

/** Ways from a room's surface into the void over it and under it. */
final class SurfaceSites {
  private static final long OFF_WALL = 60_000_000;
  private static final long[] ASIDE = {
    0,
    60_000_000,
    -60_000_000,
    120_000_000,
    -120_000_000,
    200_000_000,
    -200_000_000,
    280_000_000,
    -280_000_000
  };

  private final Draft draft;

  SurfaceSites(Draft draft) {
    this.draft = draft;
  }

  void find(List<Interest> interests) {
    for (Interest i : interests) {
      i.onWall().filter(w -> !i.outside()).ifPresent(w -> nearSpot(i.room(), w));
    }
    for (PlacedRoom r : draft.framed.placed().rooms()) {
      if (r.room().plain()) {
        plain(r);
      }
    }
  }

  private void nearSpot(String room, OnWall spot) {
    PlacedRoom r = draft.framed.placed().getRoom(room);
    List<Point2> points = new ArrayList<>();
    int away = Away.of(draft).alongU(spot.wall().frame());
    for (long aside : ASIDE) {
      long t = spot.side() == 0 ? -OFF_WALL : spot.wall().thickness() + OFF_WALL;
      Point2 p = spot.wall().world(spot.s() + away * aside, t, 0).plan();
      if (r.outline().contains(p)) {
        points.add(p);
      }
    }
    if (!points.isEmpty()) {
      up(r, points);
      down(r, points);
    }
  }

  /**
   * A garage, cellar or store shows its cables: its ceiling may be bored at either end of each bay
   * over it, and at the middle of each side.
   */
  private void plain(PlacedRoom r) {
    for (List<Point2> p : draft.looked.spots(r.name() + "/bays", () -> endsOfBays(r))) {
      up(r, p);
    }
    for (List<Point2> near : draft.looked.spots(r.name() + "/sides", () -> sides(r))) {
      CeilingBores.of(draft, r).upPastJoists(near);
    }
  }

  private List<List<Point2>> endsOfBays(PlacedRoom r) {
    List<List<Point2>> out = new ArrayList<>();
    for (Hollow bay : draft.ofKind(HollowKind.JOIST_BAY)) {
      long bottom = bay.frame().origin().z() + bay.clear().z0();
      long mid = bay.clear().y().mid();
      if (Math.abs(bottom - r.ceilingZ()) < 80_000_000) {
        for (Interval i : Scan.along(Scan.toLocal(r.outline(), bay.frame()), mid)) {
          i.cut(bay.clear().x())
              .filter(c -> c.length() > 300_000_000)
              .ifPresent(
                  c -> {
                    out.add(List.of(bay.frame().toWorld(c.lo() + 80_000_000, mid, 0).plan()));
                    out.add(List.of(bay.frame().toWorld(c.hi() - 80_000_000, mid, 0).plan()));
                  });
        }
      }
    }
    return out;
  }

  /** By side, as far as the ceiling can be seen there. */
  private List<List<Point2>> sides(PlacedRoom r) {
    List<List<Point2>> out = new ArrayList<>();
    Away away = Away.of(draft);
    Interval x = r.outline().xRange();
    Interval y = r.outline().yRange();
    for (Point2 p :
        List.of(
            new Point2(x.mid(), y.lo() + OFF_WALL),
            new Point2(x.mid(), y.hi() - OFF_WALL),
            new Point2(x.lo() + OFF_WALL, y.mid()),
            new Point2(x.hi() - OFF_WALL, y.mid()))) {
      List<Point2> near = new ArrayList<>();
      for (long aside : ASIDE) {
        near.add(p.x() == x.mid() ? away.plus(p, aside, 0) : away.plus(p, 0, aside));
      }
      near.removeIf(q -> draft.covered(r, q));
      if (!near.isEmpty()) {
        out.add(near);
      }
    }
    return out;
  }

  private void up(PlacedRoom r, List<Point2> points) {
    List<Point2> bare =
        draft.looked.bare(
            r.name(), points, () -> points.stream().filter(p -> !draft.covered(r, p)).toList());
    if (!bare.isEmpty()) {
      CeilingBores.of(draft, r).up(bare);
    }
  }

  private void down(PlacedRoom r, List<Point2> points) {
    for (Looked.Into i : draft.looked.under(r.name(), points, () -> under(r, points))) {
      draft.keepBest(
          r.name() + "/floor/", SiteKind.FLOOR, i.axes(), RoomSpaces.surface(r.name()), i.hollow());
    }
  }

  private List<Looked.Into> under(PlacedRoom r, List<Point2> points) {
    List<Looked.Into> out = new ArrayList<>();
    for (Deck d : draft.framed.decks()) {
      if (!d.level().equals(r.room().level())
          || Math.abs(d.frame().origin().z() - r.floorZ()) > 10_000_000) {
        continue;
      }
      long z1 = r.floorZ() + d.subfloorZ().lo();
      for (Hollow h : draft.hollows.values()) {
        boolean under =
            h.owner().equals(d.id()) && (h.kind() == HollowKind.JOIST_BAY || h.area().isPresent());
        if (under) {
          List<Point3[]> axes = new ArrayList<>();
          for (Point2 p : points) {
            boolean in =
                h.area().isPresent()
                    ? h.area().get().contains(p)
                    : PlateSites.inside(h, p, 20_000_000);
            if (in && draft.solids.free(p.at(z1 - 1_000_000), p.at(z1 - 150_000_000), 16_000_000)) {
              axes.add(new Point3[] {p.at(r.floorZ()), p.at(z1)});
            }
          }
          if (!axes.isEmpty()) {
            out.add(new Looked.Into(h.id(), axes));
          }
        }
      }
    }
    return out;
  }
}
