package holloway.support;

import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Point2;
import holloway.geometry.Point3;
import holloway.survey.Placed;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * Where things of a house are seen in a mirror, in words of whole millimetres from the corner of
 * the box around all rooms: words of two houses can be compared though their ids cannot.
 */
final class Reflected {
  /**
   * Millimetres begin here, nanometres: off any round measure, so that what differs by a nanometre
   * of rounding is not told as another millimetre.
   */
  private static final long OFF = 370_123;

  private static final int GAP = 3;

  private final List<Turned> ways;
  private final long x0;
  private final long x1;
  private final long y0;
  private final long y1;

  /**
   * @param ways the mirrors one after the other; none for the house as it stands
   */
  Reflected(Placed placed, List<Turned> ways) {
    this.ways = ways;
    x0 = placed.rooms().stream().mapToLong(r -> r.outline().xRange().lo()).min().orElse(0);
    x1 = placed.rooms().stream().mapToLong(r -> r.outline().xRange().hi()).max().orElse(0);
    y0 = placed.rooms().stream().mapToLong(r -> r.outline().yRange().lo()).min().orElse(0);
    y1 = placed.rooms().stream().mapToLong(r -> r.outline().yRange().hi()).max().orElse(0);
  }

  String at(Point3 p) {
    return at(p.x(), p.y()) + " " + millimetres(p.z());
  }

  String at(Point2 p) {
    return at(p.x(), p.y());
  }

  private String at(long worldX, long worldY) {
    long[] p = seen(worldX, worldY);
    return millimetres(p[0]) + " " + millimetres(p[1]);
  }

  private long[] seen(long worldX, long worldY) {
    long x = worldX - x0;
    long y = worldY - y0;
    long wide = x1 - x0;
    long deep = y1 - y0;
    for (Turned way : ways) {
      switch (way) {
        case EAST_FOR_WEST -> x = wide - x;
        case NORTH_FOR_SOUTH -> y = deep - y;
        case DIAGONALLY -> {
          long other = x;
          x = y;
          y = other;
          other = wide;
          wide = deep;
          deep = other;
        }
      }
    }
    return new long[] {x, y};
  }

  static long millimetres(long nm) {
    return Math.floorDiv(nm + OFF, 1_000_000);
  }

  /** Where a box that stands square is seen from above, and as much around it as boards gape. */
  Polygon plan(Frame frame, Box b) {
    Point3 p = frame.toWorld(b.x0(), b.y0(), b.z0());
    Point3 q = frame.toWorld(b.x1(), b.y1(), b.z1());
    long[] one = seen(p.x(), p.y());
    long[] other = seen(q.x(), q.y());
    Envelope e =
        new Envelope(
            millimetres(one[0]), millimetres(other[0]), millimetres(one[1]), millimetres(other[1]));
    e.expandBy(GAP);
    return (Polygon) new GeometryFactory().toGeometry(e);
  }

  /** How far it reaches each way if it stands square, else all its corners. */
  String box(Frame frame, Box b) {
    List<Set<Long>> reach = List.of(new TreeSet<>(), new TreeSet<>(), new TreeSet<>());
    Set<String> corners = new TreeSet<>();
    for (long x : new long[] {b.x0(), b.x1()}) {
      for (long y : new long[] {b.y0(), b.y1()}) {
        for (long z : new long[] {b.z0(), b.z1()}) {
          Point3 p = frame.toWorld(x, y, z);
          long[] q = seen(p.x(), p.y());
          reach.get(0).add(millimetres(q[0]));
          reach.get(1).add(millimetres(q[1]));
          reach.get(2).add(millimetres(p.z()));
          corners.add(at(p));
        }
      }
    }
    boolean square = reach.stream().allMatch(r -> r.size() <= 2);
    return square ? reach.toString() : corners.toString();
  }
}
