package holloway.check;

import holloway.geometry.Interval;
import holloway.house.Along;
import holloway.house.CeilingSpot;
import holloway.house.Fact;
import holloway.house.Side;
import holloway.house.WallSpot;
import holloway.plan.Plan;
import holloway.request.Outlet;
import holloway.request.Spot;
import holloway.survey.OnWall;
import holloway.survey.Placed;
import holloway.survey.PlacedRoom;
import holloway.units.Length;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A run starts and ends where the request wants it. The cable's end lies in the bay behind the face
 * (or above the ceiling), so 150 mm in plan are left for the wall's depth, or half of a wall that
 * is thicker than that leaves, and 20 mm.
 */
final class EndRule implements Rule {
  private static final double NEAR_MM = 150;

  /** How far past the middle of a thick wall the middle of its studs may lie. */
  private static final double PAST_MIDDLE_MM = 20;

  /** A ceiling outlet's cable comes from the void above it, as deep as joists and insulation. */
  private static final double VOID_MM = 600;

  @Override
  public void judge(Evidence evidence, Charge charge) {
    Map<String, Mm> agreed = new TreeMap<>();
    for (Plan.PlannedRun run : evidence.plan().runs()) {
      List<Walk.At> steps = Walk.of(run);
      if (steps.isEmpty() || run.steps().stream().anyMatch(s -> s.path().size() < 2)) {
        continue;
      }
      Walk.At first = steps.get(0);
      Walk.At last = steps.get(steps.size() - 1);
      judgeEnd(first, first.start(), run.from(), agreed, evidence, charge);
      judgeEnd(last, last.end(), run.to(), agreed, evidence, charge);
    }
  }

  private void judgeEnd(
      Walk.At at, Mm point, String end, Map<String, Mm> agreed, Evidence evidence, Charge charge) {
    Mm before = agreed.putIfAbsent(end, point);
    if (before != null && before.planTo(point) > NEAR_MM) {
      charge.step(at, "ends at %s, other runs of %s at %s", point, end, before);
    }
    List<Reach> reaches = reaches(end, evidence);
    if (reaches.stream().noneMatch(r -> r.holds(point))) {
      charge.step(
          at,
          "ends at %s, but %s is at %s",
          point,
          end,
          reaches.isEmpty() ? "no place of the house" : reaches.get(0).place());
    }
  }

  private List<Reach> reaches(String end, Evidence evidence) {
    Placed placed = evidence.house().framed().placed();
    if (end.equals("cabinet")) {
      return onWall(evidence.request().cabinet().at(), Optional.empty(), placed, false).stream()
          .toList();
    }
    return evidence.request().outlets().stream()
        .filter(o -> o.name().equals(end))
        .map(Outlet::spots)
        .flatMap(List::stream)
        .flatMap(s -> reach(s, placed).stream())
        .toList();
  }

  private Optional<Reach> reach(Spot spot, Placed placed) {
    if (spot instanceof Spot.OnWall w) {
      return onWall(w.at(), w.upTo(), placed, false);
    }
    if (spot instanceof Spot.Outside o && o.under().isPresent()) {
      return PorchPlace.of(o.under().get().porch(), placed)
          .map(p -> p.at(o.under().get()))
          .map(at -> new Reach(new Span(at, at), NEAR_MM, at.z() - NEAR_MM, at.z() + NEAR_MM));
    }
    if (spot instanceof Spot.Outside o) {
      return onWall(o.at(), Optional.empty(), placed, true);
    }
    return Optional.of(onCeiling(((Spot.OnCeiling) spot).at(), placed));
  }

  private Optional<Reach> onWall(
      WallSpot spot, Optional<Length> upTo, Placed placed, boolean outside) {
    Optional<Mm> near = facePoint(spot, spot.along(), placed, outside);
    Optional<Mm> far =
        upTo.isEmpty()
            ? near
            : facePoint(
                spot, new Along(spot.along().from(), Fact.assumed(upTo.get())), placed, outside);
    double deep =
        placed
            .findSpot(spot.face(), spot.along(), spot.height().value().nm())
            .map(o -> o.wall().thickness() / 2e6 + PAST_MIDDLE_MM)
            .filter(d -> d > NEAR_MM && !outside)
            .orElse(NEAR_MM);
    return near.map(
        n -> new Reach(new Span(n, far.orElse(n)), deep, n.z() - NEAR_MM, n.z() + NEAR_MM));
  }

  private Optional<Mm> facePoint(WallSpot spot, Along along, Placed placed, boolean outside) {
    Optional<OnWall> on = placed.findSpot(spot.face(), along, spot.height().value().nm());
    return on.map(
        o -> {
          int side = outside && o.wall().isOuter() ? o.wall().outside() : o.side();
          return Mm.of(o.wall().world(o.s(), side == 0 ? 0 : o.wall().thickness(), o.z()));
        });
  }

  private Reach onCeiling(CeilingSpot spot, Placed placed) {
    PlacedRoom room = placed.getRoom(spot.room());
    double x = from(room.outline().xRange(), spot.eastWest(), Side.WEST);
    double y = from(room.outline().yRange(), spot.northSouth(), Side.SOUTH);
    double z = room.ceilingZ() / 1e6;
    Mm at = new Mm(x, y, z);
    double hung =
        placed.house().soffits().stream()
            .filter(s -> s.room().equals(spot.room()))
            .mapToDouble(s -> s.drop().value().toMm())
            .max()
            .orElse(0);
    return new Reach(new Span(at, at), NEAR_MM, z - hung - NEAR_MM, z + VOID_MM);
  }

  private static double from(Interval range, Along along, Side low) {
    long d = along.distance().value().nm();
    return (along.from() == low ? range.lo() + d : range.hi() - d) / 1e6;
  }

  private record Reach(Span stretch, double near, double lowZ, double highZ) {
    boolean holds(Mm p) {
      return stretch.planDistance(p) <= near && p.z() >= lowZ && p.z() <= highZ;
    }

    Mm place() {
      return stretch.a();
    }
  }
}
