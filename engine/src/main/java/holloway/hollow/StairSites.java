package holloway.hollow;

import holloway.framing.Deck;
import holloway.framing.Flight;
import holloway.geometry.Box;
import holloway.geometry.Interval;
import holloway.geometry.Point2;
import holloway.geometry.Point3;
import holloway.house.Lining;
import holloway.survey.PlacedRoom;
import holloway.survey.PlacedStair;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Ways that stairs make: up the wall of the well from storey to storey, and from the space under
 * them into the walls beside it and the floor below it.
 */
final class StairSites {
  /** A cable that goes up the well lies this far off its wall, and this far from its lower edge. */
  private static final long OFF_WALL = 18_000_000;

  private static final long FROM_EDGE = 300_000_000;
  private static final long BESIDE = 60_000_000;

  /** Over the foot of a bay, as stud bores. */
  private static final long[] HEIGHTS = {320_000_000, 400_000_000, 480_000_000};

  private static final long[] ALONG = {0, 100_000_000, -100_000_000};
  private static final long MARGIN = 60_000_000;

  private final Draft draft;

  StairSites(Draft draft) {
    this.draft = draft;
  }

  void find() {
    for (PlacedStair s : draft.framed.placed().stairs()) {
      well(s);
      StairSpaces.find(draft, s)
          .ifPresent(
              space -> {
                down(s, space);
                draft.ofKind(HollowKind.STUD_BAY).forEach(bay -> aside(s, space, bay));
                if (space.blind()) {
                  patch(s, space);
                }
              });
    }
  }

  /** Up a wall that both storeys show: nothing is bored, the cable lies in sight. */
  private void well(PlacedStair s) {
    long u = s.onward() ? FROM_EDGE : s.length() - FROM_EDGE;
    for (int side = 0; side < 2; side++) {
      long wall = side == 0 ? 0 : s.width();
      long in = side == 0 ? OFF_WALL : -OFF_WALL;
      Point2 p = s.frame().toWorld(u, wall + in, 0).plan();
      Point2 beyond = s.frame().toWorld(u, wall - (side == 0 ? BESIDE : -BESIDE), 0).plan();
      for (PlacedRoom high : draft.framed.placed().rooms()) {
        boolean there =
            high.room().level().equals(s.upper().name())
                && high.outline().contains(p)
                && !high.outline().contains(beyond)
                && !s.room().outline().contains(beyond);
        if (there) {
          well(s, high, p, side);
        }
      }
    }
  }

  private void well(PlacedStair s, PlacedRoom high, Point2 p, int side) {
    Point3 a = p.at(s.room().ceilingZ() - 20_000_000);
    Point3 b = p.at(high.floorZ() + 20_000_000);
    if (draft.solids.free(a, b, 12_000_000)) {
      draft.keep(
          new Site(
              "stairs/" + s.stair().name() + "/well-" + side,
              SiteKind.OPENING,
              a,
              b,
              RoomSpaces.surface(s.room().name()),
              RoomSpaces.surface(high.name()),
              List.of(),
              List.of(new Site.Layer("opening", a.distanceTo(b))),
              51,
              51,
              true,
              false));
    }
  }

  /** Through the floor under the space into joist bays or what is worked from below. */
  private void down(PlacedStair s, Hollow space) {
    for (Deck d : draft.framed.decks()) {
      if (d.level().equals(s.room().room().level())
          && Math.abs(d.frame().origin().z() - s.room().floorZ()) < 10_000_000) {
        for (Hollow under : List.copyOf(draft.hollows.values())) {
          if (under.owner().equals(d.id())) {
            down(s, space, d, under);
          }
        }
      }
    }
  }

  private void down(PlacedStair s, Hollow space, Deck d, Hollow under) {
    long z0 = s.room().floorZ();
    long z1 = z0 + d.subfloorZ().lo();
    Box b = space.clear();
    List<Point3[]> axes = new ArrayList<>();
    int east = Away.of(draft).alongU(space.frame());
    int north = Away.of(draft).alongV(space.frame());
    for (long u = MARGIN; u <= b.x1() - b.x0() - MARGIN; u += 150_000_000) {
      for (long v = MARGIN; v <= b.y1() - b.y0() - MARGIN; v += 150_000_000) {
        long x = Away.at(b.x0(), b.x1(), east, u);
        long y = Away.at(b.y0(), b.y1(), north, v);
        Point2 p = space.frame().toWorld(x, y, 0).plan();
        boolean in =
            under.area().isPresent()
                ? under.area().get().contains(p)
                : PlateSites.inside(under, p, 20_000_000);
        if (in && draft.solids.free(p.at(z1 - 1_000_000), p.at(z1 - 150_000_000), 16_000_000)) {
          axes.add(new Point3[] {p.at(z0), p.at(z1)});
        }
      }
    }
    draft.keepBest(space.id() + "/floor/", SiteKind.FLOOR, axes, space.id(), under.id());
  }

  /** Through the linings between a stud bay and the space, square to the wall. */
  private void aside(PlacedStair s, Hollow space, Hollow bay) {
    Box c = bay.clear();
    List<Point3[]> axes = new ArrayList<>();
    int away = Away.of(draft).alongU(bay.frame());
    for (long up : HEIGHTS) {
      for (long along : ALONG) {
        for (long t : new long[] {c.y0(), c.y1()}) {
          Point3 a = bay.frame().toWorld(c.x().mid() + away * along, t, c.z0() + up);
          opposite(space, a).ifPresent(b -> axes.add(new Point3[] {a, b}));
        }
      }
    }
    if (!axes.isEmpty()) {
      String id = space.id() + "/wall/" + bay.id();
      draft
          .bores
          .best(id, SiteKind.WALL_BOARD, axes, bay.id(), space.id())
          .ifPresentOrElse(
              draft::keep,
              () ->
                  draft.refuse(
                      "bore from " + bay.id() + " under the " + s.stair().name(),
                      axes.get(0)[0],
                      draft.bores.lastReason(),
                      "framing"));
    }
  }

  /** The nearest point of the space, if it lies straight across linings and nothing else. */
  private static Optional<Point3> opposite(Hollow space, Point3 a) {
    Point3 p = space.frame().toLocal(a);
    Box b = space.clear();
    Point3 q = new Point3(b.x().clamp(p.x()), b.y().clamp(p.y()), b.z().clamp(p.z()));
    boolean across = p.x() == q.x() && p.y() != q.y() && within(b.x(), p.x());
    boolean end = p.y() == q.y() && p.x() != q.x() && within(b.y(), p.y());
    boolean level = p.z() == q.z() && within(b.z(), p.z());
    return (across || end) && level && p.distanceTo(q) <= BESIDE
        ? Optional.of(space.frame().toWorld(q))
        : Optional.empty();
  }

  private static boolean within(Interval i, long p) {
    return p >= i.lo() + MARGIN && p <= i.hi() - MARGIN;
  }

  /** A closed space can be opened through its panel, and the panel made good. */
  private void patch(PlacedStair s, Hollow space) {
    Flight flight = new Flight(s);
    Box b = space.clear();
    long deep = 100_000_000;
    long u = b.x().mid();
    long v = b.y0() + deep;
    if (flight.panelAtEnd()) {
      u = s.onward() ? b.x1() - deep : b.x0() + deep;
      v = b.y().mid();
    } else if (flight.panelAt(1)) {
      v = b.y1() - deep;
    } else if (!flight.panelAt(0)) {
      return;
    }
    Point3 at = space.frame().toWorld(u, v, Math.min(400_000_000, b.z().mid()));
    draft.accesses.add(
        new AccessPlace(
            space.id() + "/wall-patch-panel",
            space.id(),
            at,
            s.room().name(),
            AccessPlace.Kind.WALL_PATCH,
            Lining.BOARD));
  }
}
