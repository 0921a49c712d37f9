package holloway.solve;

import holloway.geometry.Point3;
import java.util.ArrayList;
import java.util.List;

/** Paths of points: their length, and the points that a straight line does not need. */
final class Polyline {
  /** Sine of the angle under which three points count as straight. */
  private static final double STRAIGHT = 1e-9;

  private Polyline() {}

  static double metres(List<Point3> path) {
    return nanometres(path) / 1e9;
  }

  static long nanometres(List<Point3> path) {
    long sum = 0;
    for (int i = 1; i < path.size(); i++) {
      sum = Math.addExact(sum, path.get(i - 1).distanceTo(path.get(i)));
    }
    return sum;
  }

  /** First and last point always stay; a turn back on itself is not straight. */
  static List<Point3> withoutNeedlessPoints(List<Point3> path) {
    List<Point3> out = new ArrayList<>();
    for (int i = 0; i < path.size(); i++) {
      Point3 p = path.get(i);
      boolean last = i == path.size() - 1;
      if (!out.isEmpty() && p.equals(out.get(out.size() - 1)) && !(last && out.size() == 1)) {
        continue;
      }
      while (out.size() > 1 && straight(out.get(out.size() - 2), out.get(out.size() - 1), p)) {
        out.remove(out.size() - 1);
      }
      out.add(p);
    }
    return List.copyOf(out);
  }

  private static boolean straight(Point3 a, Point3 b, Point3 c) {
    double ux = (b.x() - a.x()) / 1e6;
    double uy = (b.y() - a.y()) / 1e6;
    double uz = (b.z() - a.z()) / 1e6;
    double vx = (c.x() - b.x()) / 1e6;
    double vy = (c.y() - b.y()) / 1e6;
    double vz = (c.z() - b.z()) / 1e6;
    double wx = uy * vz - uz * vy;
    double wy = uz * vx - ux * vz;
    double wz = ux * vy - uy * vx;
    double along = ux * vx + uy * vy + uz * vz;
    return along > 0 && Math.sqrt(wx * wx + wy * wy + wz * wz) <= STRAIGHT * along;
  }
}
