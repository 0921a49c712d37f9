package holloway.survey;

import holloway.geometry.Interval;
import holloway.geometry.Overlay;
import holloway.geometry.Point2;
import holloway.geometry.Point3;
import holloway.house.Direction;
import holloway.house.Fact;
import holloway.house.FloorSpec;
import holloway.house.House;
import holloway.house.Roof;
import holloway.units.Length;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * Which walls carry the deck above when nobody said: outer walls, the garage's separation, and
 * inner walls across the joists near the middle of their span. From experience; a wall taken for
 * bearing is only treated with more care.
 */
record Bearing(
    House house,
    String level,
    List<PlacedRoom> roomsAbove,
    Optional<FloorSpec> above,
    Geometry deck) {
  private static final long MIDDLE = 600 * Length.NM_PER_MM;
  private static final GeometryFactory JTS = new GeometryFactory();

  Fact<Boolean> of(Framed wall, boolean separation) {
    Strip s = wall.strip();
    return s.make()
        .bearing()
        .orElseGet(
            () -> Fact.assumed(!isLow(s) && (s.isOuter() || separation || isUnderMiddle(wall))));
  }

  private static boolean isLow(Strip s) {
    return s.make().traits().height().isPresent();
  }

  private boolean isUnderMiddle(Framed wall) {
    Strip s = wall.strip();
    Point3 mid = s.heading().frame().toWorld(wall.range().mid(), s.core().mid(), 0);
    Optional<Direction> run = joists(mid.plan());
    boolean across =
        run.isPresent()
            && s.heading().isSquare()
            && s.heading().isEastWest() == (run.get() == Direction.NORTH_SOUTH);
    return across && isNearMiddle(mid.plan(), run.get());
  }

  private Optional<Direction> joists(Point2 at) {
    for (PlacedRoom r : roomsAbove) {
      if (r.room().floor().isPresent() && r.outline().contains(at)) {
        FloorSpec own = r.room().floor().get();
        return own.kind() == FloorSpec.Kind.JOISTS ? Optional.of(own.run()) : Optional.empty();
      }
    }
    if (above.isPresent()) {
      return above.filter(f -> f.kind() == FloorSpec.Kind.JOISTS).map(FloorSpec::run);
    }
    return house.roofs().stream()
        .filter(r -> r.level().filter(level::equals).isPresent() && r.frame() == Roof.Frame.RAFTERS)
        .map(r -> r.ridge().across())
        .findFirst();
  }

  private boolean isNearMiddle(Point2 at, Direction run) {
    double far = 1e6;
    double x = at.x() / 1e6;
    double y = at.y() / 1e6;
    boolean ew = run == Direction.EAST_WEST;
    Coordinate a = ew ? new Coordinate(-far, y) : new Coordinate(x, -far);
    Coordinate b = ew ? new Coordinate(far, y) : new Coordinate(x, far);
    Geometry spans = Overlay.intersection(JTS.createLineString(new Coordinate[] {a, b}), deck);
    long here = ew ? at.x() : at.y();
    for (int i = 0; i < spans.getNumGeometries(); i++) {
      Geometry span = spans.getGeometryN(i);
      if (!span.isEmpty()) {
        var box = span.getEnvelopeInternal();
        double lo = ew ? box.getMinX() : box.getMinY();
        double hi = ew ? box.getMaxX() : box.getMaxY();
        Interval stretch = new Interval(Math.round(lo * 1e6), Math.round(hi * 1e6));
        if (stretch.contains(here) && Math.abs(stretch.mid() - here) <= MIDDLE) {
          return true;
        }
      }
    }
    return false;
  }
}
