package holloway.schedule;

import holloway.framing.Attic;
import holloway.framing.Deck;
import holloway.framing.Member;
import holloway.geometry.Frame.Axis;
import holloway.geometry.Point3;
import holloway.geometry.Polygon2;
import holloway.hollow.Hollow;
import holloway.hollow.HollowHouse;
import holloway.hollow.HollowKind;
import holloway.plan.Plan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;

/** Finds every place where a run passes a floor, whether a hole is made there or not. */
final class FloorCrossings {
  /** Left, foot, right and top of what is drawn, millimetres from where the cable passes. */
  private static final double[] WINDOW = {-450, -550, 450, 450};

  /** Floors end at the framing; the walls that stand on them reach over. */
  private static final double EDGE_MM = 450;

  /** Cables this near to one another pass the floor at one place. */
  private static final long NEAR = 60_000_000;

  /** Cable that rises along the outside of the house, or beside it, passes no floor. */
  private static final Set<String> OPEN_AIR =
      Set.of(HollowKind.OUTSIDE_FACE.word(), HollowKind.SPAN.word());

  private final Plan plan;
  private final HollowHouse house;
  private final List<Plane> planes;

  private FloorCrossings(Plan plan, HollowHouse house) {
    this.plan = plan;
    this.house = house;
    planes = planes(house);
  }

  /** The height of a floor's top, and where it lies. */
  private record Plane(String above, boolean attic, long z, Polygon2 outline) {
    boolean holds(Point3 p) {
      var at = p.plan();
      return outline
          .toJts()
          .isWithinDistance(
              outline.toJts().getFactory().createPoint(new Coordinate(at.x() / 1e6, at.y() / 1e6)),
              EDGE_MM);
    }
  }

  private record Place(
      Plane plane, Point3 at, Plan.PlannedRun first, int step, List<String> runs) {}

  static List<FloorCrossing> of(Plan plan, HollowHouse house) {
    FloorCrossings f = new FloorCrossings(plan, house);
    List<Place> places = new ArrayList<>();
    plan.runs().forEach(r -> f.collect(r, places));
    places.sort(
        Comparator.comparingLong((Place p) -> p.plane().z())
            .thenComparingLong(p -> p.at().x())
            .thenComparingLong(p -> p.at().y()));
    return places.stream().map(f::crossing).toList();
  }

  private static List<Plane> planes(HollowHouse house) {
    List<Plane> out = new ArrayList<>();
    for (Deck d : house.framed().decks()) {
      long z = d.frame().toWorld(0, 0, d.subfloorZ().hi()).z();
      out.add(new Plane(d.level(), false, z, d.outline()));
    }
    for (Attic a : house.framed().attics()) {
      out.add(new Plane(a.id(), true, a.plateZ(), a.outline()));
    }
    return out;
  }

  private void collect(Plan.PlannedRun run, List<Place> places) {
    for (int i = 0; i < run.steps().size(); i++) {
      if (run.steps().get(i).hollow().filter(OPEN_AIR::contains).isPresent()) {
        continue;
      }
      List<Point3> path = run.steps().get(i).path();
      for (int k = 1; k < path.size(); k++) {
        for (Plane p : planes) {
          passes(p, path.get(k - 1), path.get(k), run, i, places);
        }
      }
    }
  }

  private void passes(
      Plane p, Point3 a, Point3 b, Plan.PlannedRun run, int step, List<Place> places) {
    boolean through = (a.z() < p.z()) != (b.z() < p.z());
    boolean upright = Math.hypot(a.x() - b.x(), a.y() - b.y()) < Math.abs(a.z() - b.z());
    Point3 at = a.withZ(p.z());
    if (!through || !upright || !p.holds(at)) {
      return;
    }
    for (Place have : places) {
      if (have.plane().z() == p.z() && have.at().distanceTo(at) <= NEAR) {
        if (!have.runs().contains(run.id())) {
          have.runs().add(run.id());
        }
        return;
      }
    }
    places.add(new Place(p, at, run, step, new ArrayList<>(List.of(run.id()))));
  }

  private FloorCrossing crossing(Place p) {
    Axis right = right(p);
    Cut cut = new Cut(p.at(), right, Axis.UP);
    List<HoleView.Shape> solids = new ArrayList<>();
    List<String> pierced = pierces(p);
    for (Member m : house.framed().members()) {
      List<double[]> outline = cut.through(m, WINDOW);
      if (!outline.isEmpty()) {
        boolean bored = pierced.contains(m.id());
        solids.add(new HoleView.Shape(m.kind().word(), bored, false, outline));
      }
    }
    boolean up = rises(p);
    return new FloorCrossing(
        p.plane().above(),
        p.plane().attic(),
        hole(p),
        hollow(p, up ? -1 : 1),
        hollow(p, up ? 1 : -1),
        p.runs(),
        Lines.word(right),
        solids,
        way(p, cut));
  }

  private Plan.PlanStep step(Place p) {
    return p.first().steps().get(p.step());
  }

  private String hole(Place p) {
    return plan.holes().stream()
        .filter(h -> h.id().equals(step(p).id()))
        .map(Plan.PlannedHole::label)
        .findFirst()
        .orElse("");
  }

  private List<String> pierces(Place p) {
    return house.findSite(step(p).id()).map(s -> s.pierces()).orElse(List.of());
  }

  private static boolean rises(Place p) {
    List<Point3> path = p.first().steps().get(p.step()).path();
    return path.get(path.size() - 1).z() >= path.get(0).z();
  }

  /** The leg before or after a crossing; a leg that passes the floor itself is both. */
  private Optional<Plan.PlanStep> beside(Place p, int turn) {
    int n = p.step();
    List<Plan.PlanStep> steps = p.first().steps();
    while (n >= 0 && n < steps.size() && !steps.get(n).kind().equals("leg")) {
      n += turn;
    }
    return n < 0 || n >= steps.size() ? Optional.empty() : Optional.of(steps.get(n));
  }

  private String hollow(Place p, int turn) {
    return beside(p, turn).flatMap(Plan.PlanStep::hollow).orElse("");
  }

  /** Across the wall that it passes in, so that plates and boards show; else east. */
  private Axis right(Place p) {
    for (int turn : new int[] {1, -1}) {
      String id = beside(p, turn).map(Plan.PlanStep::id).orElse("");
      for (Hollow h : house.hollows()) {
        boolean inWall = h.id().equals(id) && Math.abs(h.frame().w().z()) > 0.9;
        if (inWall && h.area().isEmpty() && h.clear().z().length() > 1_000_000_000L) {
          return h.frame().v();
        }
      }
    }
    return Axis.EAST;
  }

  /** The run from the leg before to the leg after, as far as it lies in the picture. */
  private List<double[]> way(Place p, Cut cut) {
    List<double[]> out = new ArrayList<>();
    List<Plan.PlanStep> steps = p.first().steps();
    int from = Math.max(0, p.step() - 2);
    for (int i = from; i <= Math.min(steps.size() - 1, p.step() + 2); i++) {
      for (Point3 q : steps.get(i).path()) {
        out.add(cut.flat(q));
      }
    }
    return Clip.lineWithin(out, WINDOW);
  }
}
