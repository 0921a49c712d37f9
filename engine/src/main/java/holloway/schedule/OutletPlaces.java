package holloway.schedule;

import holloway.geometry.Interval;
import holloway.geometry.Point2;
import holloway.geometry.Point3;
import holloway.house.CeilingSpot;
import holloway.house.Side;
import holloway.house.WallSpot;
import holloway.plan.Plan;
import holloway.request.Outlet;
import holloway.request.Request;
import holloway.request.Run;
import holloway.request.Spot;
import holloway.survey.Placed;
import holloway.survey.PlacedRoom;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Where each outlet of a plan ends up, from the ends of its runs and the spots that were wanted.
 */
public final class OutletPlaces {
  /** Further spots of a range lie so far apart, as the routing stage lays them. */
  private static final long STEP = 200_000_000L;

  private final Plan plan;
  private final Request request;
  private final Placed placed;

  private OutletPlaces(Plan plan, Request request, Placed placed) {
    this.plan = plan;
    this.request = request;
    this.placed = placed;
  }

  /** The cabinet first, then the outlets in the order of the file. */
  public static List<OutletPlace> of(Plan plan, Request request, Placed placed) {
    OutletPlaces p = new OutletPlaces(plan, request, placed);
    List<OutletPlace> out = new ArrayList<>();
    out.add(p.cabinet());
    // by name, so that the order in which a file lists them changes nothing
    request.outlets().stream()
        .sorted(Comparator.comparing(Outlet::name))
        .forEach(o -> out.add(p.outlet(o)));
    return List.copyOf(out);
  }

  /** A wanted spot with how far the end of the run lies from it. */
  private record Fit(OutletPlace place, double off) {}

  private OutletPlace cabinet() {
    Spot spot = new Spot.OnWall(request.cabinet().at(), Optional.empty());
    Outlet as =
        new Outlet("cabinet", List.of(spot), List.of(), 0, false, "", request.cabinet().where());
    OutletPlace p = fit(as, 0, Optional.empty()).place();
    return with(p, OutletPlace.Kind.CABINET);
  }

  private static OutletPlace with(OutletPlace p, OutletPlace.Kind kind) {
    return new OutletPlace(
        p.name(),
        kind,
        p.room(),
        p.side(),
        p.face(),
        p.fromLow(),
        p.fromHigh(),
        p.height(),
        p.spot(),
        p.ranged(),
        p.moved(),
        p.cables(),
        p.spares(),
        p.routed(),
        p.at());
  }

  private OutletPlace outlet(Outlet o) {
    Optional<Point3> end = end(o.name());
    Fit best = fit(o, 0, end);
    for (int i = 1; end.isPresent() && i < o.spots().size(); i++) {
      Fit f = fit(o, i, end);
      best = f.off() < best.off() ? f : best;
    }
    return best.place();
  }

  private Optional<Point3> end(String name) {
    for (Plan.PlannedRun r : plan.runs()) {
      if (r.steps().isEmpty()) {
        continue;
      }
      if (r.to().equals(name)) {
        List<Point3> last = r.steps().get(r.steps().size() - 1).path();
        return Optional.of(last.get(last.size() - 1));
      }
      if (r.from().equals(name)) {
        return Optional.of(r.steps().get(0).path().get(0));
      }
    }
    return Optional.empty();
  }

  private Fit fit(Outlet o, int index, Optional<Point3> end) {
    Spot spot = o.spots().get(index);
    if (spot instanceof Spot.OnCeiling c) {
      return onCeiling(o, index, c.at(), end);
    }
    if (spot instanceof Spot.Outside out) {
      return onWall(o, index, new Spot.OnWall(out.at(), Optional.empty()), true, end);
    }
    return onWall(o, index, (Spot.OnWall) spot, false, end);
  }

  private Fit onWall(Outlet o, int index, Spot.OnWall spot, boolean outside, Optional<Point3> end) {
    WallSpot at = spot.at();
    PlacedRoom room = placed.getRoom(at.face().room());
    Placed.Segment f = placed.listFaces(room.name(), at.face().side()).get(at.face().ordinal() - 1);
    long length = f.start().at(0).distanceTo(f.end().at(0));
    boolean low = at.along().from() == Side.WEST || at.along().from() == Side.SOUTH;
    long asked = at.along().distance().value().nm();
    long height = at.height().value().nm();
    Point3 real = end.orElse(room.outline().corners().get(0).at(0));
    double dx = (f.end().x() - f.start().x()) / (double) length;
    double dy = (f.end().y() - f.start().y()) / (double) length;
    double ex = real.x() - f.start().x();
    double ey = real.y() - f.start().y();
    long along = end.isPresent() ? Math.round(ex * dx + ey * dy) : low ? asked : length - asked;
    long fromAsked = low ? along : length - along;
    long wished = spot.upTo().map(u -> nearest(asked, u.nm(), fromAsked)).orElse(asked);
    double off =
        Math.abs(ex * dy - ey * dx)
            + Math.abs(fromAsked - wished)
            + Math.abs(real.z() - room.floorZ() - height);
    long moved = (low ? 1 : -1) * (fromAsked - wished);
    OutletPlace place =
        new OutletPlace(
            o.name(),
            outside ? OutletPlace.Kind.OUTSIDE : OutletPlace.Kind.WALL,
            room.name(),
            at.face().side(),
            at.face().ordinal(),
            along,
            length - along,
            end.map(p -> p.z() - room.floorZ()).orElse(height),
            o.spots().size() > 1 ? OptionalInt.of(index + 1) : OptionalInt.empty(),
            spot.upTo().isPresent(),
            moved,
            cables(o.name()),
            spares(o.name()),
            end.isPresent() || o.cables().isEmpty(),
            end.or(() -> end(o.name())));
    return new Fit(place, off);
  }

  /** The spot of a range that lies nearest: the wanted one, or one of those laid over the range. */
  private static long nearest(long asked, long upTo, long real) {
    Interval range = new Interval(Math.min(asked, upTo), Math.max(asked, upTo));
    long best = asked;
    for (long d = range.lo(); d <= range.hi(); d += STEP) {
      best = Math.abs(d - real) < Math.abs(best - real) ? d : best;
    }
    return best;
  }

  private Fit onCeiling(Outlet o, int index, CeilingSpot at, Optional<Point3> end) {
    PlacedRoom room = placed.getRoom(at.room());
    Interval x = room.outline().xRange();
    Interval y = room.outline().yRange();
    long dx = at.eastWest().distance().value().nm();
    long dy = at.northSouth().distance().value().nm();
    Point2 wished =
        new Point2(
            at.eastWest().from() == Side.WEST ? x.lo() + dx : x.hi() - dx,
            at.northSouth().from() == Side.SOUTH ? y.lo() + dy : y.hi() - dy);
    Point2 real = end.map(Point3::plan).orElse(wished);
    double off = wished.at(0).distanceTo(real.at(0));
    OutletPlace place =
        new OutletPlace(
            o.name(),
            OutletPlace.Kind.CEILING,
            room.name(),
            Side.NORTH,
            1,
            real.x() - x.lo(),
            real.y() - y.lo(),
            room.ceilingZ() - room.floorZ(),
            o.spots().size() > 1 ? OptionalInt.of(index + 1) : OptionalInt.empty(),
            false,
            Math.round(off),
            cables(o.name()),
            spares(o.name()),
            end.isPresent(),
            end);
    double high = end.map(p -> (double) Math.abs(p.z() - room.ceilingZ())).orElse(0.0);
    return new Fit(place, off + high);
  }

  private List<String> cables(String name) {
    return plan.runs().stream()
        .filter(r -> r.to().equals(name) || r.from().equals(name))
        .map(Plan.PlannedRun::cable)
        .toList();
  }

  private int spares(String name) {
    List<String> spare = request.runs().stream().filter(Run::spare).map(Run::id).toList();
    return (int)
        plan.runs().stream()
            .filter(r -> r.to().equals(name) || r.from().equals(name))
            .filter(r -> spare.contains(r.id()))
            .count();
  }
}
