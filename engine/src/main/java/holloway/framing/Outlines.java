package holloway.framing;

import holloway.geometry.Interval;
import holloway.geometry.Overlay;
import holloway.geometry.Point2;
import holloway.geometry.Point3;
import holloway.geometry.Polygon2;
import holloway.survey.Placed;
import holloway.survey.PlacedRoom;
import holloway.survey.Wall;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/** Outlines of groups of rooms together with the walls that carry what lies over or under them. */
final class Outlines {
  /** Linings between room and core are closed up to this, millimetres. */
  private static final double CLOSE_MM = 25;

  /** What is thinner is no space, millimetres: rounding leaves it, and joins what lies apart. */
  private static final double SLIVER_MM = 5;

  private Outlines() {}

  /**
   * The joined outlines of some rooms of a level and of their walls, as separate parts from
   * south-west to north-east.
   *
   * @param masonry whether masonry walls belong to it (a roof rests on them, a floor stops at them)
   */
  static Geometry of(Placed placed, String level, Predicate<PlacedRoom> rooms, boolean masonry) {
    List<Geometry> parts = new ArrayList<>();
    List<String> names = new ArrayList<>();
    for (PlacedRoom r : placed.rooms()) {
      if (r.room().level().equals(level) && rooms.test(r)) {
        parts.add(r.outline().toJts());
        names.add(r.name());
      }
    }
    for (Wall w : placed.walls()) {
      boolean shows =
          w.level().equals(level) && w.faces().stream().anyMatch(f -> names.contains(f.room()));
      if (shows && (w.isFramed() || masonry)) {
        Geometry strip = strip(w, along(w, names)).toJts();
        parts.add(masonry ? strip : outOfMasonry(placed, w, strip));
      }
    }
    return joined(parts);
  }

  /**
   * The plan of an inner framed wall without its ends in the plaster of masonry: no floor is there,
   * and an outline with such a jog in it has no straight edge to lay a joist along.
   */
  static Geometry outOfMasonry(Placed placed, Wall framed, Geometry strip) {
    Geometry left = strip;
    for (Wall m : placed.walls()) {
      if (!framed.isOuter() && !m.isFramed() && m.level().equals(framed.level())) {
        Geometry all = band(m, 0, m.thickness()).toJts();
        left = all.intersects(left) ? Overlay.difference(left, all) : left;
      }
    }
    return left;
  }

  /** The union of some outlines, narrow gaps between them closed. */
  static Geometry joined(List<Geometry> parts) {
    if (parts.isEmpty()) {
      return Polygon2.rectangle(0, 0, 1, 1).toJts().getFactory().createPolygon();
    }
    return buffer(buffer(Overlay.union(parts), CLOSE_MM), -CLOSE_MM);
  }

  /** As {@link #strip(Wall)}, the stretch along some rooms alone. */
  static Polygon2 strip(Wall w, List<String> names) {
    return strip(w, along(w, names));
  }

  /**
   * A wall's plan strip: core, with the lining where a room shows, up to the outer face of the core
   * outside.
   */
  static Polygon2 strip(Wall w) {
    return strip(w, new Interval(0, w.length()));
  }

  private static Polygon2 strip(Wall w, Interval along) {
    long t0 = w.outside() == 0 ? w.core().lo() : 0;
    long t1 = w.outside() == 1 ? w.core().hi() : w.thickness();
    return band(w, along, t0, t1);
  }

  /** The plan strip of a wall's studs. */
  static Polygon2 core(Wall w) {
    return band(w, w.core().lo(), w.core().hi());
  }

  private static Polygon2 band(Wall w, long t0, long t1) {
    return band(w, new Interval(0, w.length()), t0, t1);
  }

  /** A stretch of a wall's plan between two depths. */
  static Polygon2 band(Wall w, Interval s, long t0, long t1) {
    List<Point2> corners = new ArrayList<>();
    for (Point3 p :
        List.of(
            w.world(s.lo(), t0, 0),
            w.world(s.hi(), t0, 0),
            w.world(s.hi(), t1, 0),
            w.world(s.lo(), t1, 0))) {
      corners.add(p.plan());
    }
    return new Polygon2(corners);
  }

  private static Geometry buffer(Geometry g, double by) {
    BufferParameters square =
        new BufferParameters(1, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 5);
    return BufferOp.bufferOp(g, by, square);
  }

  /**
   * The stretch of a wall along some rooms: to its ends, or to where another room begins, so that a
   * roof over some rooms, or their floor, does not reach along an outer wall over the others.
   */
  private static Interval along(Wall w, List<String> names) {
    List<Interval> shown =
        w.faces().stream().filter(f -> names.contains(f.room())).map(Wall.WallFace::s).toList();
    long lo = shown.stream().mapToLong(Interval::lo).min().orElseThrow();
    long hi = shown.stream().mapToLong(Interval::hi).max().orElseThrow();
    long from = 0;
    long to = w.length();
    for (Wall.WallFace f : w.faces()) {
      if (!names.contains(f.room())) {
        from = f.s().hi() <= lo ? Math.max(from, f.s().hi()) : from;
        to = f.s().lo() >= hi ? Math.min(to, f.s().lo()) : to;
      }
    }
    return new Interval(from, to);
  }

  /** The parts of an outline left beside some rooms and the walls along them. */
  static List<Polygon2> without(Placed placed, Polygon2 outline, List<PlacedRoom> rooms) {
    if (rooms.isEmpty()) {
      return List.of(outline);
    }
    List<Geometry> taken = new ArrayList<>();
    rooms.forEach(r -> taken.add(r.outline().toJts()));
    List<String> names = rooms.stream().map(PlacedRoom::name).toList();
    for (Wall w : placed.walls()) {
      for (Wall.WallFace f : w.faces()) {
        if (names.contains(f.room())) {
          taken.add(band(w, f.s(), 0, w.thickness()).toJts());
        }
      }
    }
    Geometry joined = buffer(buffer(Overlay.union(taken), CLOSE_MM), -CLOSE_MM);
    Geometry left = Overlay.difference(outline.toJts(), joined);
    return parts(buffer(buffer(left, -SLIVER_MM / 2), SLIVER_MM / 2));
  }

  /** The parts of a geometry bigger than 0.1 m², by south-west corner. */
  static List<Polygon2> parts(Geometry g) {
    List<Polygon2> out = new ArrayList<>();
    for (int i = 0; i < g.getNumGeometries(); i++) {
      if (g.getGeometryN(i) instanceof Polygon p && p.getArea() > 100_000) {
        out.add(Polygon2.ofJts(p));
      }
    }
    out.sort(
        Comparator.comparing((Polygon2 p) -> p.xRange().lo()).thenComparing(p -> p.yRange().lo()));
    return out;
  }
}
