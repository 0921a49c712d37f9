package holloway.survey;

import holloway.geometry.Box;
import holloway.geometry.Interval;
import holloway.geometry.Overlay;
import holloway.geometry.Point2;
import holloway.house.Beam;
import holloway.house.Direction;
import holloway.house.Side;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * A stretch of a beam in the world, from face to face of its room.
 *
 * @param box from face to face; its ends go on into what carries them
 */
public record PlacedBeam(Beam beam, PlacedRoom room, Box box) {
  private static final GeometryFactory JTS = new GeometryFactory();
  private static final double FAR_MM = 1e6;
  private static final double LEAST_MM = 100;

  /** All of a house, in the order of their names. */
  public static List<PlacedBeam> of(Placed placed) {
    List<PlacedBeam> out = new ArrayList<>();
    placed.house().beams().forEach(b -> out.addAll(of(placed.getRoom(b.room()), b)));
    return out;
  }

  static List<PlacedBeam> of(PlacedRoom room, Beam b) {
    boolean ew = b.run() == Direction.EAST_WEST;
    Interval across = ew ? room.outline().yRange() : room.outline().xRange();
    boolean low = b.from().from() == Side.SOUTH || b.from().from() == Side.WEST;
    long d = b.from().distance().value().nm();
    long mid = low ? across.lo() + d : across.hi() - d;
    long half = b.width().value().nm() / 2;
    long z0 = room.ceilingZ() - b.drop().value().nm();
    long z1 = z0 + b.height().value().nm();
    List<PlacedBeam> out = new ArrayList<>();
    for (Interval i : spans(room, mid, ew)) {
      Box box =
          ew
              ? new Box(i.lo(), i.hi(), mid - half, mid + half, z0, z1)
              : new Box(mid - half, mid + half, i.lo(), i.hi(), z0, z1);
      out.add(new PlacedBeam(b, room, box));
    }
    return out;
  }

  private static List<Interval> spans(PlacedRoom room, long mid, boolean ew) {
    double at = mid / 1e6;
    Coordinate a = ew ? new Coordinate(-FAR_MM, at) : new Coordinate(at, -FAR_MM);
    Coordinate b = ew ? new Coordinate(FAR_MM, at) : new Coordinate(at, FAR_MM);
    Geometry line =
        Overlay.intersection(JTS.createLineString(new Coordinate[] {a, b}), room.outline().toJts());
    List<Interval> out = new ArrayList<>();
    for (int i = 0; i < line.getNumGeometries(); i++) {
      var e = line.getGeometryN(i).getEnvelopeInternal();
      double lo = ew ? e.getMinX() : e.getMinY();
      double hi = ew ? e.getMaxX() : e.getMaxY();
      if (hi - lo >= LEAST_MM) {
        out.add(new Interval(Math.round(lo * 1e6), Math.round(hi * 1e6)));
      }
    }
    return out;
  }

  public boolean eastWest() {
    return beam.run() == Direction.EAST_WEST;
  }

  /** With its ends in the walls that carry it, so far. */
  public Box box(long into) {
    return eastWest()
        ? new Box(box.x0() - into, box.x1() + into, box.y0(), box.y1(), box.z0(), box.z1())
        : new Box(box.x0(), box.x1(), box.y0() - into, box.y1() + into, box.z0(), box.z1());
  }

  /** Does it hang below the ceiling at all? */
  public boolean hangs() {
    return beam.drop().value().nm() > 0;
  }

  public boolean covers(Point2 p) {
    return box.x().contains(p.x()) && box.y().contains(p.y());
  }
}
