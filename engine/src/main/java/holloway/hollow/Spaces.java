package holloway.hollow;

import holloway.geometry.Polygon2;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/**
 * Plan regions in millimetres: growing and shrinking with square corners, parts, and what a body
 * can reach.
 */
final class Spaces {
  private static final GeometryFactory JTS = new GeometryFactory();

  private Spaces() {}

  static Geometry grow(Geometry g, double mm) {
    return BufferOp.bufferOp(
        g, mm, new BufferParameters(1, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 5));
  }

  static Geometry rectangle(double x0, double y0, double x1, double y1) {
    return JTS.toGeometry(new org.locationtech.jts.geom.Envelope(x0, x1, y0, y1));
  }

  static Geometry point(double x, double y) {
    return JTS.createPoint(new Coordinate(x, y));
  }

  /** The connected part of a region nearest to a point, if it is within {@code reachMm} of it. */
  static Optional<Polygon> partAt(Geometry region, Geometry point, double reachMm) {
    List<Polygon> parts = polygons(region);
    return parts.stream()
        .filter(p -> p.distance(point) <= reachMm)
        .min(Comparator.comparingDouble(p -> p.distance(point)));
  }

  static List<Polygon> polygons(Geometry g) {
    List<Polygon> out = new ArrayList<>();
    for (int i = 0; i < g.getNumGeometries(); i++) {
      if (g.getGeometryN(i) instanceof Polygon p && !p.isEmpty()) {
        out.add(p);
      }
    }
    return out;
  }

  /** The largest part as an outline. */
  static Optional<Polygon2> largest(Geometry g) {
    return polygons(g).stream()
        .max(Comparator.comparingDouble(Polygon::getArea))
        .map(Polygon2::ofJts);
  }
}
