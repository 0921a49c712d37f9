package holloway.survey;

import holloway.geometry.Frame;
import holloway.geometry.Interval;
import holloway.geometry.Overlay;
import holloway.geometry.Point3;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/**
 * What is inside the house on one level: all rooms, the gaps between them, and recesses too narrow
 * to be a porch. Geometry in JTS millimetres.
 */
final class Outdoors {
  /** A recess narrower than this is taken for space nobody surveyed; from experience. */
  static final long WIDEST_RECESS = 900 * Length.NM_PER_MM;

  private static final double HALF_RECESS = WIDEST_RECESS / 2e6;

  /** Looked at this far in front of a face, millimetres. */
  private static final double AHEAD = 30;

  private static final GeometryFactory JTS = new GeometryFactory();

  private final Geometry inside;

  Outdoors(List<PlacedRoom> rooms) {
    this.inside = closed(rooms.stream().map(r -> (Geometry) r.outline().toJts()).toList());
  }

  Geometry inside() {
    return inside;
  }

  /** The union with gaps and narrow recesses closed and holes filled. */
  static Geometry closed(List<Geometry> parts) {
    Geometry grown = square(Overlay.union(parts), HALF_RECESS);
    return Overlay.union(square(filled(grown), -HALF_RECESS), Overlay.union(parts));
  }

  static Geometry filled(Geometry g) {
    List<Geometry> rings = new ArrayList<>();
    for (int i = 0; i < g.getNumGeometries(); i++) {
      if (g.getGeometryN(i) instanceof Polygon p) {
        rings.add(JTS.createPolygon(p.getExteriorRing().getCoordinates()));
      }
    }
    return Overlay.union(rings.isEmpty() ? List.of(g) : rings);
  }

  /** Grown or shrunk with square corners. */
  static Geometry square(Geometry g, double by) {
    BufferParameters how = new BufferParameters();
    how.setJoinStyle(BufferParameters.JOIN_MITRE);
    how.setMitreLimit(10);
    return BufferOp.bufferOp(g, by, how);
  }

  /** The stretches of {@code s} in front of the edge that lie inside the house. */
  List<Interval> insideAhead(Frame frame, Edge e, Interval s) {
    long t = e.t() + Math.round((e.below() ? AHEAD : -AHEAD) * 1e6);
    Coordinate a = at(frame, s.lo(), t);
    Coordinate b = at(frame, s.hi(), t);
    Geometry cut = Overlay.intersection(JTS.createLineString(new Coordinate[] {a, b}), inside);
    List<Interval> out = new ArrayList<>();
    for (int i = 0; i < cut.getNumGeometries(); i++) {
      if (cut.getGeometryN(i) instanceof LineString l && l.getLength() > 0) {
        long p = along(frame, l.getCoordinateN(0));
        long q = along(frame, l.getCoordinateN(l.getNumPoints() - 1));
        out.add(new Interval(snap(Math.min(p, q), s), snap(Math.max(p, q), s)));
      }
    }
    return out;
  }

  private static Coordinate at(Frame frame, long s, long t) {
    Point3 p = frame.toWorld(s, t, 0);
    return new Coordinate(p.x() / 1e6, p.y() / 1e6);
  }

  private static long along(Frame frame, Coordinate c) {
    return frame.toLocal(new Point3(Math.round(c.x * 1e6), Math.round(c.y * 1e6), 0)).x();
  }

  /** To the micrometre, and onto the ends of the stretch looked at. */
  private static long snap(long p, Interval s) {
    long rounded = Math.round(p / 1000.0) * 1000;
    if (Math.abs(rounded - s.lo()) <= 2000) {
      return s.lo();
    }
    return Math.abs(rounded - s.hi()) <= 2000 ? s.hi() : s.clamp(rounded);
  }
}
