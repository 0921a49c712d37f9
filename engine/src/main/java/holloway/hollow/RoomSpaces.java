package holloway.hollow;

import holloway.framing.Framed;
import holloway.framing.Lowered;
import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Interval;
import holloway.house.Fill;
import holloway.survey.PlacedRoom;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The open surfaces of rooms and the outside face of the house, where cable is clipped in sight.
 */
final class RoomSpaces {
  static final String OUTSIDE = "outside/face";
  private static final long ROUND = 600_000_000;

  private RoomSpaces() {}

  static String surface(String room) {
    return room + "/surface";
  }

  static List<Hollow> hollows(Framed framed) {
    UnderSlopes slopes = new UnderSlopes(framed);
    List<Hollow> out = new ArrayList<>();
    for (PlacedRoom r : framed.placed().rooms()) {
      if (!r.room().standing().isOpen()) {
        continue;
      }
      Interval x = r.outline().xRange();
      Interval y = r.outline().yRange();
      long top = Math.min(Lowered.visibleCeiling(framed.placed(), r), slopes.over(r));
      Box box = new Box(x.lo(), x.hi(), y.lo(), y.hi(), r.floorZ(), top);
      out.add(
          new Hollow(
              surface(r.name()),
              HollowKind.ROOM_SURFACE,
              Frame.WORLD,
              box,
              Optional.of(r.outline()),
              Fill.EMPTY,
              r.name(),
              Optional.of("room/" + r.name())));
    }
    out.add(outside(framed));
    return out;
  }

  private static Hollow outside(Framed framed) {
    long x1 =
        framed.placed().rooms().stream().mapToLong(r -> r.outline().xRange().hi()).max().orElse(0);
    long y1 =
        framed.placed().rooms().stream().mapToLong(r -> r.outline().yRange().hi()).max().orElse(0);
    long z0 = framed.placed().rooms().stream().mapToLong(PlacedRoom::floorZ).min().orElse(0);
    long z1 = framed.placed().rooms().stream().mapToLong(PlacedRoom::ceilingZ).max().orElse(0);
    Box box = new Box(-ROUND, x1 + ROUND, -ROUND, y1 + ROUND, z0 - ROUND, z1 + ROUND);
    return new Hollow(
        OUTSIDE,
        HollowKind.OUTSIDE_FACE,
        Frame.WORLD,
        box,
        Optional.empty(),
        Fill.EMPTY,
        "outside",
        Optional.of("outside"));
  }
}
