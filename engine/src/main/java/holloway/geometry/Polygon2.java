package holloway.geometry;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/**
 * A simple polygon of the floor plan, corners counter-clockwise, not repeated at the end. Areas and
 * overlays go through JTS in millimetres.
 */
public record Polygon2(List<Point2> corners) {
  private static final GeometryFactory JTS = new GeometryFactory();

  public Polygon2 {
    corners = List.copyOf(corners);
    if (corners.size() < 3) {
      throw new IllegalArgumentException("a polygon needs 3 corners, not " + corners.size());
    }
  }

  public static Polygon2 rectangle(long x0, long y0, long x1, long y1) {
    return new Polygon2(
        List.of(new Point2(x0, y0), new Point2(x1, y0), new Point2(x1, y1), new Point2(x0, y1)));
  }

  /**
   * Twice the signed area in square millimetres; positive when the corners run counter-clockwise.
   */
  public double signedAreaMm2() {
    double twice = 0;
    for (int i = 0; i < corners.size(); i++) {
      Point2 a = corners.get(i);
      Point2 b = corners.get((i + 1) % corners.size());
      twice += (a.x() / 1e6) * (b.y() / 1e6) - (b.x() / 1e6) * (a.y() / 1e6);
    }
    return twice / 2;
  }

  /** The same outline, counter-clockwise. */
  public Polygon2 counterClockwise() {
    if (signedAreaMm2() >= 0) {
      return this;
    }
    List<Point2> turned = new ArrayList<>(corners);
    java.util.Collections.reverse(turned);
    return new Polygon2(turned);
  }

  public Interval xRange() {
    return new Interval(
        corners.stream().mapToLong(Point2::x).min().orElseThrow(),
        corners.stream().mapToLong(Point2::x).max().orElseThrow());
  }

  public Interval yRange() {
    return new Interval(
        corners.stream().mapToLong(Point2::y).min().orElseThrow(),
        corners.stream().mapToLong(Point2::y).max().orElseThrow());
  }

  public Polygon2 shifted(long dx, long dy) {
    return new Polygon2(corners.stream().map(p -> p.plus(dx, dy)).toList());
  }

  /** As a JTS polygon in millimetres. */
  public Polygon toJts() {
    Coordinate[] ring = new Coordinate[corners.size() + 1];
    for (int i = 0; i <= corners.size(); i++) {
      Point2 p = corners.get(i % corners.size());
      ring[i] = new Coordinate(p.x() / 1e6, p.y() / 1e6);
    }
    return JTS.createPolygon(ring);
  }

  /**
   * The outer ring of a JTS polygon in millimetres, rounded to the micrometre, counter-clockwise.
   */
  public static Polygon2 ofJts(Polygon polygon) {
    Coordinate[] ring = polygon.getExteriorRing().getCoordinates();
    List<Point2> out = new ArrayList<>();
    for (int i = 0; i + 1 < ring.length; i++) {
      out.add(new Point2(Math.round(ring[i].x * 1000) * 1000, Math.round(ring[i].y * 1000) * 1000));
    }
    return new Polygon2(out).counterClockwise();
  }

  /** Border included. Most points lie outside the box around, and most rooms fill theirs. */
  public boolean contains(Point2 p) {
    long x0 = Long.MAX_VALUE;
    long x1 = Long.MIN_VALUE;
    long y0 = Long.MAX_VALUE;
    long y1 = Long.MIN_VALUE;
    for (Point2 c : corners) {
      x0 = Math.min(x0, c.x());
      x1 = Math.max(x1, c.x());
      y0 = Math.min(y0, c.y());
      y1 = Math.max(y1, c.y());
    }
    boolean inBox = p.x() >= x0 && p.x() <= x1 && p.y() >= y0 && p.y() <= y1;
    return inBox && (isBox() || covers(toJts(), p));
  }

  /** Four corners with sides east and north by turns. */
  private boolean isBox() {
    if (corners.size() != 4) {
      return false;
    }
    boolean eastFirst = corners.get(0).y() == corners.get(1).y();
    for (int i = 0; i < 4; i++) {
      Point2 a = corners.get(i);
      Point2 b = corners.get((i + 1) % 4);
      boolean square = (i % 2 == 0) == eastFirst ? a.y() == b.y() : a.x() == b.x();
      if (!square) {
        return false;
      }
    }
    return true;
  }

  /** True when the JTS geometry (millimetres) holds the point, border included. */
  public static boolean covers(Geometry geometry, Point2 p) {
    Point point = JTS.createPoint(new Coordinate(p.x() / 1e6, p.y() / 1e6));
    return geometry.covers(point);
  }
}
