package holloway.report;

import holloway.geometry.Interval;
import holloway.geometry.Point2;
import holloway.geometry.Point3;
import holloway.house.Side;
import holloway.house.WallSpot;
import holloway.plan.Plan;
import holloway.request.Outlet;
import holloway.request.Spot;
import holloway.survey.Placed;
import holloway.survey.PlacedRoom;
import java.util.List;
import java.util.Optional;

/**
 * Where each outlet's cut-out goes, taped from both ends of its wall: a range or a stud decides
 * that, not the wish alone.
 */
final class OutletsSection {
  /** A cut-out's cable end lies within this of the face it is in, behind the lining. */
  private static final long BEHIND = 260_000_000;

  /** Nearer to the wish than this is where it was wanted. */
  private static final long SAME = 6_000_000;

  private final Sheet sheet;
  private final Page page;

  OutletsSection(Sheet sheet, Page page) {
    this.sheet = sheet;
    this.page = page;
  }

  void write() {
    page.title("OUTLETS");
    for (Outlet o : sheet.request().outlets()) {
      end(o.name()).ifPresent(p -> page.put("  ", 6, o.name() + ": " + where(o, p) + cables(o)));
    }
  }

  private String cables(Outlet o) {
    long n =
        sheet.plan().runs().stream()
            .filter(r -> r.to().equals(o.name()) || r.from().equals(o.name()))
            .count();
    return "; " + UnitWords.count(n, "cable");
  }

  /** The end of a run at this outlet. */
  private Optional<Point3> end(String outlet) {
    for (Plan.PlannedRun r : sheet.plan().runs()) {
      List<Plan.PlanStep> steps = r.steps();
      if (!steps.isEmpty() && r.to().equals(outlet)) {
        List<Point3> path = steps.get(steps.size() - 1).path();
        return Optional.of(path.get(path.size() - 1));
      }
      if (!steps.isEmpty() && r.from().equals(outlet)) {
        return Optional.of(steps.get(0).path().get(0));
      }
    }
    return Optional.empty();
  }

  private String where(Outlet o, Point3 p) {
    for (Spot s : o.spots()) {
      Optional<String> words = Optional.empty();
      if (s instanceof Spot.OnWall w) {
        words = onFace(w.at(), p, w.upTo().isPresent(), "wall");
      } else if (s instanceof Spot.Outside w) {
        words = onFace(w.at(), p, false, "wall, outside,");
      } else if (s instanceof Spot.OnCeiling c) {
        words = onCeiling(c, p);
      }
      if (words.isPresent()) {
        return words.get();
      }
    }
    return new PlaceWords(sheet.placed(), sheet.units()).of(p);
  }

  private Optional<String> onFace(WallSpot at, Point3 p, boolean range, String wall) {
    Placed placed = sheet.placed();
    List<Placed.Segment> faces = placed.listFaces(at.face().room(), at.face().side());
    if (at.face().ordinal() > faces.size()) {
      return Optional.empty();
    }
    Placed.Segment f = faces.get(at.face().ordinal() - 1);
    double length = f.start().at(0).distanceTo(f.end().at(0));
    double ux = (f.end().x() - f.start().x()) / length;
    double uy = (f.end().y() - f.start().y()) / length;
    double dx = p.x() - f.start().x();
    double dy = p.y() - f.start().y();
    long along = Math.round(dx * ux + dy * uy);
    long off = Math.round(Math.abs(dy * ux - dx * uy));
    PlacedRoom room = placed.getRoom(at.face().room());
    long height = p.z() - room.floorZ();
    boolean here =
        off < BEHIND
            && along > -SAME
            && along < length + SAME
            && Math.abs(height - at.height().value().nm()) < 30_000_000;
    if (!here) {
      return Optional.empty();
    }
    boolean ew = at.face().side().runsEastWest();
    boolean fromStart = at.along().from() == Side.WEST || at.along().from() == Side.SOUTH;
    long wished =
        fromStart
            ? at.along().distance().value().nm()
            : Math.round(length) - at.along().distance().value().nm();
    return Optional.of(
        "%s %s of the %s, %s from its %s end and %s from its %s end, middle %s above the floor%s"
            .formatted(
                at.face().side().word(),
                wall,
                room.name(),
                sheet.units().tape(along),
                ew ? "west" : "south",
                sheet.units().tape(Math.round(length) - along),
                ew ? "east" : "north",
                sheet.units().tape(height),
                moved(along - wished, range)));
  }

  private String moved(long by, boolean range) {
    if (Math.abs(by) < SAME) {
      return "";
    }
    String how = sheet.units().tape(Math.abs(by));
    return range
        ? " (chosen within its range)"
        : " (" + how + " from where it was wanted, to miss a stud)";
  }

  private Optional<String> onCeiling(Spot.OnCeiling c, Point3 p) {
    PlacedRoom room = sheet.placed().getRoom(c.at().room());
    Point2 q = p.plan();
    if (!room.outline().contains(q)) {
      return Optional.empty();
    }
    Interval x = room.outline().xRange();
    Interval y = room.outline().yRange();
    return Optional.of(
        "ceiling of the %s, %s from its west side and %s from its south side"
            .formatted(
                room.name(),
                sheet.units().tape(q.x() - x.lo()),
                sheet.units().tape(q.y() - y.lo())));
  }
}
