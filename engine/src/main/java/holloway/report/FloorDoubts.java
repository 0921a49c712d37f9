package holloway.report;

import holloway.geometry.Point3;
import holloway.house.FloorSpec;
import holloway.plan.Plan;
import holloway.survey.Placed;
import holloway.survey.PlacedLevel;
import holloway.survey.PlacedRoom;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * Holes up or down past joists, and boxes between them, that nobody has found a joist for: one line
 * a floor. Holes through a joist itself say so on their cards.
 */
final class FloorDoubts {
  /** From a floor down past joists, strapping and ceiling; and up into a bottom plate. */
  private static final long DOWN = 450_000_000;

  private static final long UP = 60_000_000;

  /** In the wall beside a room one is still on its floor, millimetres. */
  private static final double BESIDE_MM = 300;

  private final Plan plan;
  private final Placed placed;
  private final Map<String, List<String>> byFloor = new TreeMap<>();

  private FloorDoubts(Plan plan, Placed placed) {
    this.plan = plan;
    this.placed = placed;
  }

  static List<String> lines(Plan plan, Placed placed) {
    FloorDoubts d = new FloorDoubts(plan, placed);
    d.holes();
    d.boxes();
    List<String> out = new ArrayList<>();
    d.byFloor.forEach(
        (level, what) ->
            out.add(
                ("%s: where the joists of the %s floor lie is assumed. Find a joist there, and the"
                        + " next one; if they lie elsewhere, say where one is (floor: from) and plan"
                        + " again.")
                    .formatted(String.join(", ", what), level)));
    return out;
  }

  private void holes() {
    for (Plan.PlannedHole h : plan.holes()) {
      Point3 a = h.axis().get(0);
      Point3 b = h.axis().get(h.axis().size() - 1);
      boolean upright = Math.abs(a.z() - b.z()) > Math.abs(a.x() - b.x()) + Math.abs(a.y() - b.y());
      if (upright && !h.assumed()) {
        add(h.at(), h.label());
      }
    }
  }

  /** Boxes in a ceiling. */
  private void boxes() {
    Set<String> done = new TreeSet<>();
    for (Plan.PlannedRun r : plan.runs()) {
      r.steps().stream()
          .skip(Math.max(0, r.steps().size() - 1))
          .filter(s -> s.hollow().equals(Optional.of("joist bay")) && done.add(r.to()))
          .forEach(s -> add(s.path().get(s.path().size() - 1), r.to()));
    }
  }

  private void add(Point3 at, String what) {
    placed.levelsAt(at.plan()).stream()
        .filter(l -> at.z() > l.floorZ() - DOWN && at.z() < l.floorZ() + UP)
        .filter(l -> isAssumed(l, at))
        .findFirst()
        .ifPresent(l -> byFloor.computeIfAbsent(l.name(), k -> new ArrayList<>()).add(what));
  }

  /** Whether joists lie at a spot that nobody has found: those its nearest room stands on. */
  private boolean isAssumed(PlacedLevel l, Point3 at) {
    Geometry spot = new GeometryFactory().createPoint(new Coordinate(at.x() / 1e6, at.y() / 1e6));
    return placed.rooms().stream()
        .filter(r -> r.room().level().equals(l.name()))
        .filter(r -> r.outline().toJts().distance(spot) < BESIDE_MM)
        .min(
            Comparator.comparingDouble((PlacedRoom r) -> r.outline().toJts().distance(spot))
                .thenComparing(PlacedRoom::name))
        .map(r -> r.room().floor().orElse(l.level().floor()))
        .filter(f -> f.kind() == FloorSpec.Kind.JOISTS && f.origin().isEmpty())
        .isPresent();
  }
}
