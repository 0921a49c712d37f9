package holloway.report;

import holloway.geometry.Point3;
import holloway.house.FaceRef;
import holloway.plan.Plan;
import holloway.request.Outlet;
import holloway.request.Request;
import holloway.request.Spot;
import holloway.survey.Placed;
import holloway.survey.PlacedRoom;
import holloway.survey.Wall;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Where each outlet and the cabinet came to sit, read from where its runs end in the plan: the plan
 * may have chosen among alternatives, along a range, or beside a stud.
 */
final class OutletPlaces {
  /** How far a run's end may lie from a wall's faces, nanometres: a cabinet's or box's depth. */
  private static final long NEAR = 150_000_000L;

  private final Placed placed;
  private final UnitWords units;

  OutletPlaces(Placed placed, UnitWords units) {
    this.placed = placed;
    this.units = units;
  }

  /** In words by name; the cabinet among them. An outlet without a planned run is left out. */
  static TreeMap<String, String> of(Plan plan, Placed placed, Request request, UnitWords units) {
    OutletPlaces places = new OutletPlaces(placed, units);
    TreeMap<String, String> out = new TreeMap<>();
    ends(plan).forEach((name, at) -> out.put(name, places.words(at, faces(request, name))));
    return out;
  }

  /** Faces that were asked for, true for the outside behind one: a bay does not tell its sides. */
  private static Map<FaceRef, Boolean> faces(Request request, String name) {
    Map<FaceRef, Boolean> out = new LinkedHashMap<>();
    if (name.equals("cabinet")) {
      out.put(request.cabinet().at().face(), false);
    }
    for (Outlet o : request.outlets()) {
      for (Spot spot : o.name().equals(name) ? o.spots() : List.<Spot>of()) {
        if (spot instanceof Spot.OnWall on) {
          out.put(on.at().face(), false);
        } else if (spot instanceof Spot.Outside behind) {
          out.put(behind.at().face(), true);
        }
      }
    }
    return out;
  }

  /** The first run by id that begins or ends there decides; all runs of an outlet end together. */
  static TreeMap<String, Point3> ends(Plan plan) {
    TreeMap<String, Point3> out = new TreeMap<>();
    for (Plan.PlannedRun r : plan.runs()) {
      if (!r.steps().isEmpty()) {
        out.putIfAbsent(r.from(), r.steps().get(0).path().get(0));
        List<Point3> last = r.steps().get(r.steps().size() - 1).path();
        out.putIfAbsent(r.to(), last.get(last.size() - 1));
      }
    }
    return out;
  }

  private String words(Point3 p, Map<FaceRef, Boolean> asked) {
    return placed.walls().stream()
        .filter(w -> near(w, p))
        .sorted(Comparator.comparingLong((Wall w) -> off(w, p)).thenComparing(Wall::id))
        .flatMap(w -> onWall(w, p, asked).stream())
        .findFirst()
        .or(() -> onCeiling(p))
        .orElseGet(() -> new PlaceWords(placed, units).of(p));
  }

  private static boolean near(Wall w, Point3 p) {
    Point3 l = w.frame().toLocal(p);
    return l.x() >= 0
        && l.x() <= w.length()
        && l.z() >= 0
        && l.z() < w.height()
        && off(w, p) <= NEAR;
  }

  private static long off(Wall w, Point3 p) {
    long t = w.frame().toLocal(p).y();
    return Math.max(0, Math.max(-t, t - w.thickness()));
  }

  private static Optional<Boolean> outside(Wall.WallFace f, Map<FaceRef, Boolean> asked) {
    return asked.entrySet().stream()
        .filter(e -> e.getKey().room().equals(f.room()))
        .filter(e -> e.getKey().side() == f.roomSide() && e.getKey().ordinal() == f.ordinal())
        .map(Map.Entry::getValue)
        .findFirst();
  }

  private Optional<String> onWall(Wall w, Point3 p, Map<FaceRef, Boolean> asked) {
    Point3 l = w.frame().toLocal(p);
    return w.faces().stream()
        .filter(f -> f.s().contains(l.x()) && outside(f, asked).isPresent())
        .findFirst()
        .map(
            f ->
                "%s%s wall of the %s, %s from its %s end and %s from its %s end, %s above the floor"
                    .formatted(
                        outside(f, asked).orElse(false) ? "outside of the " : "",
                        f.roomSide().word(),
                        f.room(),
                        units.tape(l.x() - f.s().lo()),
                        f.roomSide().runsEastWest() ? "west" : "south",
                        units.tape(f.s().hi() - l.x()),
                        f.roomSide().runsEastWest() ? "east" : "north",
                        units.tape(l.z() - f.floorZ())));
  }

  private Optional<String> onCeiling(Point3 p) {
    return placed.rooms().stream()
        .filter(r -> r.outline().contains(p.plan()) && r.ceilingZ() <= p.z() + NEAR)
        .max(Comparator.comparingLong(PlacedRoom::ceilingZ))
        .map(
            r ->
                "ceiling of the %s, %s east of its west end and %s north of its south end"
                    .formatted(
                        r.name(),
                        units.tape(p.x() - r.outline().xRange().lo()),
                        units.tape(p.y() - r.outline().yRange().lo())));
  }
}
