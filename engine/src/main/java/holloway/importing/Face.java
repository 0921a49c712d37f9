package holloway.importing;

import holloway.geometry.Interval;
import holloway.geometry.Point2;
import holloway.house.Side;

/**
 * One visible segment of a room's side, nanometres.
 *
 * @param ordinal from 1, from west or south
 * @param start its west or south end
 */
record Face(PlanRoom room, Side side, int ordinal, Point2 start, Point2 end) {
  /** A house file counts the faces of a side up to here. */
  static final int MOST = 9;

  boolean isSquare() {
    return side.runsEastWest() ? start.y() == end.y() : start.x() == end.x();
  }

  double length() {
    return Math.hypot(end.x() - start.x(), end.y() - start.y());
  }

  /** Unit vector from start to end. */
  Vec along() {
    return new Vec(end.x() - start.x(), end.y() - start.y(), 0).unit();
  }

  /** Unit vector out of the room. */
  Vec outward() {
    Vec u = along();
    boolean right = side == Side.SOUTH || side == Side.EAST;
    return right ? new Vec(u.y(), -u.x(), 0) : new Vec(-u.y(), u.x(), 0);
  }

  /** Of a square face: its position on the axis it looks along. */
  long across() {
    return side.runsEastWest() ? start.y() : start.x();
  }

  /** Of a square face: its stretch along itself. */
  Interval stretch() {
    return side.runsEastWest()
        ? new Interval(start.x(), end.x())
        : new Interval(start.y(), end.y());
  }

  /** Distance from the start along the face and outward from it, nanometres. */
  double[] locate(double x, double y) {
    Vec d = new Vec(x - start.x(), y - start.y(), 0);
    return new double[] {d.dot(along()), d.dot(outward())};
  }
}
