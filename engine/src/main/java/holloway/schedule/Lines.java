package holloway.schedule;

import holloway.geometry.Frame;
import holloway.geometry.Frame.Axis;
import holloway.geometry.Point3;

/** Walking along directions of the world. */
final class Lines {
  private Lines() {}

  static Point3 walk(Point3 from, Axis a, long nm) {
    return new Point3(
        from.x() + Math.round(a.x() * nm),
        from.y() + Math.round(a.y() * nm),
        from.z() + Math.round(a.z() * nm));
  }

  static Axis turned(Axis a) {
    return new Axis(-a.x(), -a.y(), -a.z());
  }

  static double dot(Axis a, Axis b) {
    return a.x() * b.x() + a.y() * b.y() + a.z() * b.z();
  }

  /** The unit vector from one point to another; upwards when they are the same. */
  static Axis between(Point3 from, Point3 to) {
    double x = to.x() - from.x();
    double y = to.y() - from.y();
    double z = to.z() - from.z();
    double n = Math.sqrt(x * x + y * y + z * z);
    return n == 0 ? Axis.UP : new Axis(x / n, y / n, z / n);
  }

  /** The compass or upright word for a direction. */
  static String word(Axis a) {
    if (Math.abs(a.z()) > 0.9) {
      return a.z() > 0 ? "above" : "below";
    }
    return Math.abs(a.x()) >= Math.abs(a.y())
        ? a.x() > 0 ? "east" : "west"
        : a.y() > 0 ? "north" : "south";
  }

  /** The axis of a frame by its index: along, across, up. */
  static Axis axis(Frame f, int index) {
    return index == 0 ? f.u() : index == 1 ? f.v() : f.w();
  }

  static long coordinate(Point3 p, int index) {
    return index == 0 ? p.x() : index == 1 ? p.y() : p.z();
  }
}
