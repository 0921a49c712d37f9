package holloway.check;

import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Interval;
import holloway.hollow.HollowKind;
import holloway.house.Side;
import holloway.house.WallRef;
import holloway.house.WallSpec;
import holloway.survey.Placed;
import holloway.survey.PlacedRoom;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Cable in a room is fixed to something. Where the house file says that a wall is half as high, or
 * that two rooms meet without one, the air there holds nothing: worked out again from the rooms'
 * outlines and what is said of the wall.
 */
final class AirRule implements Rule {
  /** So far into a room cable still runs along where the wall would be. */
  private static final long BESIDE = 80_000_000;

  /** The wall at the end of an open side holds what lies this near. */
  private static final long AT_END = 60_000_000;

  /** A ceiling holds what lies this near below it, a header what lies on its face. */
  private static final long AT_CEILING = 60_000_000;

  private static final long FURTHEST = 450_000_000;
  private static final long ROUNDING = 1_000_000;

  @Override
  public void judge(Evidence evidence, Charge charge) {
    List<Solid> air = air(evidence.house().framed().placed());
    for (Walk.At at : evidence.steps()) {
      boolean seen =
          at.isLeg()
              && evidence.hollow(at).filter(h -> h.kind() == HollowKind.ROOM_SURFACE).isPresent();
      if (seen && air.stream().anyMatch(a -> at.spans().stream().anyMatch(s -> a.entered(s, 1)))) {
        charge.step(at, "hangs in the air: no wall stands there as high as that");
      }
    }
  }

  private static List<Solid> air(Placed placed) {
    List<Solid> out = new ArrayList<>();
    for (WallSpec w : placed.house().walls()) {
      boolean open = w.kind().filter(k -> k == WallSpec.Kind.OPEN).isPresent();
      Optional<Long> high = w.traits().height().map(h -> h.value().nm());
      if (open || high.isPresent()) {
        long drop = w.traits().header().map(h -> h.value().nm()).orElse(AT_CEILING);
        w.ref()
            .flatMap(WallRef::between)
            .ifPresent(
                b -> air(placed.getRoom(b.one()), placed.getRoom(b.other()), high, drop, out));
      }
    }
    return out;
  }

  private static void air(
      PlacedRoom a, PlacedRoom b, Optional<Long> high, long drop, List<Solid> out) {
    long floor = Math.max(a.floorZ(), b.floorZ());
    long z0 = high.map(h -> floor + h).orElse(Math.min(a.floorZ(), b.floorZ()));
    long z1 = Math.min(a.ceilingZ(), b.ceilingZ()) - drop;
    for (Side side : Side.values()) {
      for (Line f : lines(a, side)) {
        for (Line g : lines(b, side.opposite())) {
          between(side, f, g)
              .filter(x -> z1 > z0)
              .ifPresent(x -> out.add(new Solid(Frame.WORLD, x.box(side.runsEastWest(), z0, z1))));
        }
      }
    }
  }

  /** A straight stretch of an outline: where along, and where across. */
  private record Line(Interval along, long across) {}

  /** What lies between two faces and beside them. */
  private record Strip(Interval along, Interval across) {
    Box box(boolean eastWest, long z0, long z1) {
      Interval x = eastWest ? along : across;
      Interval y = eastWest ? across : along;
      return new Box(x.lo(), x.hi(), y.lo(), y.hi(), z0, z1);
    }
  }

  private static Optional<Strip> between(Side side, Line f, Line g) {
    boolean onward = side == Side.EAST || side == Side.NORTH;
    long gap = onward ? g.across() - f.across() : f.across() - g.across();
    long lo = Math.max(f.along().lo(), g.along().lo()) + AT_END;
    long hi = Math.min(f.along().hi(), g.along().hi()) - AT_END;
    if (gap < -ROUNDING || gap > FURTHEST || hi <= lo) {
      return Optional.empty();
    }
    long low = Math.min(f.across(), g.across()) - BESIDE;
    long top = Math.max(f.across(), g.across()) + BESIDE;
    return Optional.of(new Strip(new Interval(lo, hi), new Interval(low, top)));
  }

  private static List<Line> lines(PlacedRoom r, Side side) {
    List<Line> out = new ArrayList<>();
    var corners = r.outline().counterClockwise().corners();
    for (int i = 0; i < corners.size(); i++) {
      var p = corners.get(i);
      var q = corners.get((i + 1) % corners.size());
      boolean eastward = p.y() == q.y() && q.x() > p.x();
      boolean westward = p.y() == q.y() && q.x() < p.x();
      boolean northward = p.x() == q.x() && q.y() > p.y();
      boolean southward = p.x() == q.x() && q.y() < p.y();
      boolean is =
          switch (side) {
            case SOUTH -> eastward;
            case NORTH -> westward;
            case EAST -> northward;
            case WEST -> southward;
          };
      if (is) {
        boolean flat = side.runsEastWest();
        long s = flat ? p.x() : p.y();
        long t = flat ? q.x() : q.y();
        out.add(new Line(new Interval(Math.min(s, t), Math.max(s, t)), flat ? p.y() : p.x()));
      }
    }
    return out;
  }
}
