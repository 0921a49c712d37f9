package holloway.survey;

import holloway.geometry.Interval;
import holloway.geometry.Point2;
import holloway.house.Along;
import holloway.house.Conduit;
import holloway.house.Fact;
import holloway.house.Origin;
import holloway.house.Side;
import holloway.house.WallSpot;
import holloway.house.Where;
import holloway.units.Length;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Where a building is drawn of which nobody taped how far off it stands: so that the link to it is
 * no longer than stated, its two ends look at each other, and daylight is between the buildings.
 * Nothing but the drawing hangs on it.
 */
final class ApartPlace {
  /** Between the rooms of two buildings: two walls and more than a recess; from experience. */
  private static final long CLEAR = 1_600_000_000;

  /** An outer wall as drawn here, and what the ends may be nearer than the link is long. */
  private static final long WALL = 300_000_000;

  private static final long SHORT_OF = 400_000_000;
  private static final int STEPS = 24;
  private static final long UNLINKED = 3_000_000_000L;

  private final Map<String, RoomShape> shapes;
  private final Anchors anchors;
  private final List<RoomShape> there;
  private final List<RoomShape> own;

  /**
   * @param there rooms that stand already
   * @param own rooms of the building, standing where they do not stay
   */
  ApartPlace(
      Map<String, RoomShape> shapes, Anchors anchors, List<RoomShape> there, List<RoomShape> own) {
    this.shapes = shapes;
    this.anchors = anchors;
    this.there = there;
    this.own = own;
  }

  /** Moves the building to where it is drawn, and ties its first room there to the house's. */
  void settle(List<Conduit> links, RoomShape first, RoomShape root) {
    Point2 d = shift(links);
    own.forEach(
        o -> anchors.settle(o, anchors.of(o, Axis.X) + d.x(), anchors.of(o, Axis.Y) + d.y()));
    tie(first, root, Side.WEST, Axis.X);
    tie(first, root, Side.SOUTH, Axis.Y);
  }

  /** No hole is measured from one building to the other, so the drawn place has no spread. */
  private void tie(RoomShape first, RoomShape root, Side side, Axis axis) {
    Where where = root.room().where();
    RoomShape.Face to = root.edge(side);
    RoomShape.Face from = first.edge(side);
    long off = anchors.of(root, axis) + to.across();
    off -= anchors.of(first, axis) + from.across();
    Fact<Length> drawn = new Fact<>(new Length(off), Fact.TAPE, Origin.ASSUMED, where);
    anchors.tie(from, to, drawn, Makeup.ALIGN_SPREAD, "drawn apart");
  }

  /** How far the building is moved, east and north. */
  private Point2 shift(List<Conduit> links) {
    for (Conduit c : links) {
      Optional<Mouth> a = mouth(c.from());
      Optional<Mouth> b = mouth(c.to());
      if (c.outdoor().isPresent() && a.isPresent() && b.isPresent()) {
        boolean leads = isThere(c.from()) && isOwn(c.to());
        boolean back = isOwn(c.from()) && isThere(c.to());
        if (leads || back) {
          Optional<Point2> at = leads ? best(a.get(), b.get(), c) : best(b.get(), a.get(), c);
          if (at.isPresent()) {
            return at.get();
          }
        }
      }
    }
    return eastOfAll();
  }

  private record Mouth(Point2 at, long outX, long outY) {}

  private Optional<Mouth> mouth(WallSpot spot) {
    RoomShape s = shapes.get(spot.face().room());
    Side side = spot.face().side();
    if (s == null || !anchors.hold(s.room().name())) {
      return Optional.empty();
    }
    return s.squareFaces(side).stream()
        .filter(f -> f.ordinal() == spot.face().ordinal())
        .findFirst()
        .map(
            f -> {
              long along = along(f.along(), spot.along());
              long out = side == Side.EAST || side == Side.NORTH ? 1 : -1;
              long x = side.runsEastWest() ? along : f.across() + out * WALL;
              long y = side.runsEastWest() ? f.across() + out * WALL : along;
              Point2 at = new Point2(x + anchors.of(s, Axis.X), y + anchors.of(s, Axis.Y));
              return new Mouth(at, side.runsEastWest() ? 0 : out, side.runsEastWest() ? out : 0);
            });
  }

  private static long along(Interval face, Along a) {
    boolean low = a.from() == Side.WEST || a.from() == Side.SOUTH;
    long d = a.distance().value().nm();
    return low ? face.lo() + d : face.hi() - d;
  }

  private boolean isThere(WallSpot spot) {
    return there.contains(shapes.get(spot.face().room()));
  }

  private boolean isOwn(WallSpot spot) {
    return own.contains(shapes.get(spot.face().room()));
  }

  /** The farthest that both ends look at each other over; the first of equals. */
  private Optional<Point2> best(Mouth from, Mouth to, Conduit link) {
    long reach = Math.max(WALL, link.length().value().nm() - SHORT_OF);
    Point2 best = null;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = -STEPS; i <= STEPS; i++) {
      for (int j = -STEPS; j <= STEPS; j++) {
        long dx = reach / STEPS * i;
        long dy = reach / STEPS * j;
        Point2 move = new Point2(from.at.x() + dx - to.at.x(), from.at.y() + dy - to.at.y());
        double score = (double) (from.outX - to.outX) * dx + (double) (from.outY - to.outY) * dy;
        boolean near = Math.hypot(dx, dy) <= reach + 1.0;
        if (near && score > most && clear(move)) {
          most = score;
          best = move;
        }
      }
    }
    return Optional.ofNullable(best);
  }

  private boolean clear(Point2 move) {
    for (RoomShape o : own) {
      Interval x = x(o, move.x());
      Interval y = y(o, move.y());
      for (RoomShape t : there) {
        Interval u = x(t, 0);
        Interval v = y(t, 0);
        boolean apart =
            x.lo() >= u.hi() + CLEAR
                || u.lo() >= x.hi() + CLEAR
                || y.lo() >= v.hi() + CLEAR
                || v.lo() >= y.hi() + CLEAR;
        if (!apart) {
          return false;
        }
      }
    }
    return true;
  }

  private Point2 eastOfAll() {
    long east = there.stream().mapToLong(t -> x(t, 0).hi()).max().orElse(0);
    long west = own.stream().mapToLong(o -> x(o, 0).lo()).min().orElse(0);
    return new Point2(east + UNLINKED - west, 0);
  }

  private Interval x(RoomShape s, long move) {
    Interval i = s.polygon().xRange();
    long at = anchors.of(s, Axis.X) + move;
    return new Interval(i.lo() + at, i.hi() + at);
  }

  private Interval y(RoomShape s, long move) {
    Interval i = s.polygon().yRange();
    long at = anchors.of(s, Axis.Y) + move;
    return new Interval(i.lo() + at, i.hi() + at);
  }
}
