package holloway.routing;

import holloway.geometry.Box;
import holloway.geometry.Interval;
import holloway.geometry.Overlay;
import holloway.geometry.Point2;
import holloway.geometry.Polygon2;
import holloway.survey.OpenSide;
import holloway.survey.Placed;
import holloway.survey.PlacedBeam;
import holloway.survey.PlacedRoom;
import holloway.survey.Wall;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.linearref.LengthIndexedLine;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/**
 * The lines on which cable is clipped: round a room just off its walls, and round the house just
 * off its cladding.
 */
final class SurfaceLines {
  /** Cable centre off the wall, millimetres. */
  private static final double OFF = 12;

  /** The last stretch of an open side can be reached from the wall it ends at. */
  private static final long AT_END = 30_000_000;

  private static final long OFF_CEILING = 12_000_000;
  private static final long ON_HEADER = 30_000_000;

  /** Cable turns down so far before a beam. */
  private static final long BESIDE = 20_000_000;

  private SurfaceLines() {}

  static List<Point2> inRoom(PlacedRoom r) {
    return outer(grow(r.outline().toJts(), -OFF))
        .map(Polygon2::corners)
        .orElse(r.outline().corners());
  }

  /** Round the rooms and outer walls of a level: one line for each building. */
  static List<List<Point2>> outside(Placed placed, String level) {
    List<Geometry> parts = new ArrayList<>();
    placed.rooms().stream()
        .filter(r -> r.room().level().equals(level))
        .forEach(r -> parts.add(r.outline().toJts()));
    for (Wall w : placed.walls()) {
      if (w.level().equals(level)) {
        List<Point2> c =
            List.of(
                w.world(0, 0, 0).plan(),
                w.world(w.length(), 0, 0).plan(),
                w.world(w.length(), w.thickness(), 0).plan(),
                w.world(0, w.thickness(), 0).plan());
        parts.add(new Polygon2(c).toJts());
      }
    }
    if (parts.isEmpty()) {
      return List.of();
    }
    Geometry closed = grow(grow(Overlay.union(parts), 60), -60);
    Geometry off = grow(closed, OFF);
    List<List<Point2>> out = new ArrayList<>();
    for (int i = 0; i < off.getNumGeometries(); i++) {
      outer(off.getGeometryN(i)).map(Polygon2::corners).ifPresent(out::add);
    }
    return out;
  }

  private static Geometry grow(Geometry g, double by) {
    return BufferOp.bufferOp(
        g, by, new BufferParameters(1, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 5));
  }

  private static Optional<Polygon2> outer(Geometry g) {
    Polygon best = null;
    for (int i = 0; i < g.getNumGeometries(); i++) {
      if (g.getGeometryN(i) instanceof Polygon p
          && !p.isEmpty()
          && (best == null || p.getArea() > best.getArea())) {
        best = p;
      }
    }
    return Optional.ofNullable(best).map(Polygon2::ofJts);
  }

  /**
   * The stretches of a line that openings of nearby walls take, as distances from its first corner.
   */
  static List<RingNet.Gap> gaps(
      Placed placed,
      String level,
      List<Point2> line,
      long floorZ,
      long ceilingZ,
      Optional<String> room) {
    List<RingNet.Gap> out = new ArrayList<>();
    LengthIndexedLine index = new LengthIndexedLine(closed(line));
    for (Wall w : placed.walls()) {
      boolean shows =
          room.isEmpty()
              ? w.isOuter()
              : w.faces().stream().anyMatch(f -> f.room().equals(room.get()));
      if (w.level().equals(level) && shows) {
        for (Wall.WallOpening o : w.openings()) {
          for (int side = 0; side < 2; side++) {
            Point2 a = w.world(o.s().lo(), side == 0 ? 0 : w.thickness(), 0).plan();
            Point2 b = w.world(o.s().hi(), side == 0 ? 0 : w.thickness(), 0).plan();
            long over =
                Math.min(w.frame().origin().z() + o.z().hi() + 60_000_000, ceilingZ - 15_000_000);
            if (w.frame().origin().z() + o.z().hi() > ceilingZ) {
              over = RingNet.Gap.NOT_PASSED; // under a slope a door is higher than the wall's line
            }
            boolean low = w.frame().origin().z() + o.z().lo() < floorZ + 120_000_000;
            if (low && near(index, a) && near(index, b)) {
              long p = Math.round(index.project(coordinate(a)) * 1e6);
              long q = Math.round(index.project(coordinate(b)) * 1e6);
              out.add(
                  new RingNet.Gap(
                      new Interval(Math.min(p, q) - 40_000_000, Math.max(p, q) + 40_000_000),
                      over));
            }
          }
        }
      }
    }
    room.ifPresent(r -> bare(placed, r, index, ceilingZ, out));
    room.ifPresent(r -> beams(placed, r, index, out));
    return out;
  }

  /** Nothing to clip to: over a half-height wall, and where the room meets another without one. */
  private static void bare(
      Placed placed, String room, LengthIndexedLine index, long ceilingZ, List<RingNet.Gap> out) {
    long over = ceilingZ - OFF_CEILING;
    for (OpenSide o : OpenSide.of(placed)) {
      if (o.shows(room)) {
        boolean first = o.first().name().equals(room);
        long top = o.header() && o.headZ() + ON_HEADER < over ? o.headZ() + ON_HEADER : over;
        Point2 a = o.inside(first, o.along().lo() + AT_END, 0);
        Point2 b = o.inside(first, o.along().hi() - AT_END, 0);
        bare(index, a, b, Long.MIN_VALUE, top).ifPresent(out::add);
      }
    }
    for (Wall w : placed.walls()) {
      for (Wall.WallFace f : w.faces()) {
        if (w.isLow() && f.room().equals(room) && w.world(0, 0, w.height()).z() < over) {
          long t = f.side() == 0 ? 0 : w.thickness();
          Point2 a = w.world(f.s().lo() + AT_END, t, 0).plan();
          Point2 b = w.world(f.s().hi() - AT_END, t, 0).plan();
          bare(index, a, b, w.world(0, 0, w.height()).z(), over).ifPresent(out::add);
        }
      }
    }
  }

  /** Under the end of a beam that hangs below the ceiling. */
  private static void beams(
      Placed placed, String room, LengthIndexedLine index, List<RingNet.Gap> out) {
    for (PlacedBeam b : PlacedBeam.of(placed)) {
      if (b.hangs() && b.room().name().equals(room)) {
        Box x = b.box();
        boolean ew = b.eastWest();
        for (int end = 0; end < 2; end++) {
          long at = ew ? (end == 0 ? x.x0() : x.x1()) : (end == 0 ? x.y0() : x.y1());
          Point2 p = ew ? new Point2(at, x.y0() - BESIDE) : new Point2(x.x0() - BESIDE, at);
          Point2 q = ew ? new Point2(at, x.y1() + BESIDE) : new Point2(x.x1() + BESIDE, at);
          under(index, p, q, x.z0()).ifPresent(out::add);
        }
      }
    }
  }

  private static Optional<RingNet.Gap> under(LengthIndexedLine index, Point2 a, Point2 b, long z) {
    return bare(index, a, b, z - OFF_CEILING, z - OFF_CEILING)
        .map(g -> new RingNet.Gap(g.at(), z - OFF_CEILING, z - OFF_CEILING, RingNet.Sort.UNDER));
  }

  private static Optional<RingNet.Gap> bare(
      LengthIndexedLine index, Point2 a, Point2 b, long fromZ, long overZ) {
    if (!near(index, a) || !near(index, b)) {
      return Optional.empty();
    }
    long p = Math.round(index.project(coordinate(a)) * 1e6);
    long q = Math.round(index.project(coordinate(b)) * 1e6);
    return Optional.of(
        new RingNet.Gap(
            new Interval(Math.min(p, q), Math.max(p, q)), overZ, fromZ, RingNet.Sort.BARE));
  }

  private static boolean near(LengthIndexedLine index, Point2 p) {
    return index.extractPoint(index.project(coordinate(p))).distance(coordinate(p)) < OFF + 6;
  }

  private static LineString closed(List<Point2> line) {
    Coordinate[] c = new Coordinate[line.size() + 1];
    for (int i = 0; i <= line.size(); i++) {
      c[i] = coordinate(line.get(i % line.size()));
    }
    return new org.locationtech.jts.geom.GeometryFactory().createLineString(c);
  }

  private static Coordinate coordinate(Point2 p) {
    return new Coordinate(p.x() / 1e6, p.y() / 1e6);
  }
}
