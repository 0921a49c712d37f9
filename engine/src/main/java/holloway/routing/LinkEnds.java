package holloway.routing;

import holloway.geometry.Point3;
import holloway.house.Conduit;
import holloway.house.WallSpot;
import holloway.survey.Placed;
import holloway.survey.PlacedRoom;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Spans between buildings end on an outer wall, not in the air over it. */
final class LinkEnds {
  /** Plates, the floor over them or a rafter's heel: cable is clipped so far over a ceiling. */
  private static final long OVER_CEILING = 600_000_000;

  /** A room belongs to the wall it lies this near to, seen from above. */
  private static final double AT_WALL = 1_000;

  private LinkEnds() {}

  /** One problem for each end over the top of what stands there. */
  static List<Ends.Problem> problems(Placed placed) {
    List<Ends.Problem> out = new ArrayList<>();
    for (Conduit c : placed.house().conduits()) {
      if (c.kind() == Conduit.Kind.SPAN) {
        Stream.of(c.from(), c.to()).forEach(at -> problem(placed, c, at, out));
      }
    }
    return out;
  }

  private static void problem(Placed placed, Conduit c, WallSpot at, List<Ends.Problem> out) {
    placed
        .findSpot(at.face(), at.along(), at.height().value().nm())
        .ifPresent(
            spot -> {
              Point3 end = spot.wall().world(spot.s(), spot.wall().thickness() / 2, spot.z());
              long over = end.z() - highest(placed, end);
              if (over > OVER_CEILING) {
                out.add(
                    new Ends.Problem(
                        c.where(),
                        "outdoor link %s: its end at '%s' lies %s high, %s over the ceiling of the highest room there; cable is clipped up to %s over it"
                            .formatted(
                                c.name(),
                                at.face(),
                                at.height().value(),
                                new Length(over),
                                new Length(OVER_CEILING))));
              }
            });
  }

  /** The highest ceiling by the wall, of whichever storey. */
  private static long highest(Placed placed, Point3 end) {
    return placed.rooms().stream()
        .filter(r -> FaceNets.near(r.outline().corners(), end.plan(), AT_WALL))
        .mapToLong(PlacedRoom::ceilingZ)
        .max()
        .orElse(end.z());
  }
}
