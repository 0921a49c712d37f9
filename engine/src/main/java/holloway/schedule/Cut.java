package holloway.schedule;

import holloway.framing.Member;
import holloway.geometry.Frame.Axis;
import holloway.geometry.Point3;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A plane through the house and what it cuts, in millimetres right and up of its origin. */
record Cut(Point3 origin, Axis right, Axis up) {
  double[] flat(Point3 p) {
    double x = (p.x() - origin.x()) / 1e6;
    double y = (p.y() - origin.y()) / 1e6;
    double z = (p.z() - origin.z()) / 1e6;
    return new double[] {
      x * right.x() + y * right.y() + z * right.z(), x * up.x() + y * up.y() + z * up.z()
    };
  }

  private Axis normal() {
    return new Axis(
        right.y() * up.z() - right.z() * up.y(),
        right.z() * up.x() - right.x() * up.z(),
        right.x() * up.y() - right.y() * up.x());
  }

  private double depth(Point3 p) {
    Axis n = normal();
    return (p.x() - origin.x()) / 1e6 * n.x()
        + (p.y() - origin.y()) / 1e6 * n.y()
        + (p.z() - origin.z()) / 1e6 * n.z();
  }

  /** The outline where the plane cuts the box, within a window; empty when it does not. */
  List<double[]> through(Member m, double[] window) {
    List<double[]> points = new ArrayList<>();
    Point3[] c = new Point3[8];
    for (int i = 0; i < 8; i++) {
      c[i] =
          m.frame()
              .toWorld(
                  (i & 1) == 0 ? m.box().x0() : m.box().x1(),
                  (i & 2) == 0 ? m.box().y0() : m.box().y1(),
                  (i & 4) == 0 ? m.box().z0() : m.box().z1());
    }
    for (int i = 0; i < 8; i++) {
      for (int bit = 1; bit < 8; bit <<= 1) {
        if ((i & bit) == 0) {
          cross(c[i], c[i | bit], points);
        }
      }
    }
    return points.size() < 3 ? List.of() : clipped(round(points), window);
  }

  private void cross(Point3 a, Point3 b, List<double[]> out) {
    double da = depth(a);
    double db = depth(b);
    if (da * db < 0) {
      double t = da / (da - db);
      double[] p = flat(a);
      double[] q = flat(b);
      out.add(new double[] {p[0] + (q[0] - p[0]) * t, p[1] + (q[1] - p[1]) * t});
    }
  }

  /** In order round their middle. */
  private static List<double[]> round(List<double[]> points) {
    double x = points.stream().mapToDouble(p -> p[0]).average().orElse(0);
    double y = points.stream().mapToDouble(p -> p[1]).average().orElse(0);
    List<double[]> out = new ArrayList<>(points);
    out.sort(Comparator.comparingDouble(p -> Math.atan2(p[1] - y, p[0] - x)));
    return out;
  }

  /**
   * What of a convex outline lies in a window.
   *
   * @param window left, foot, right, top
   */
  private static List<double[]> clipped(List<double[]> outline, double[] window) {
    List<double[]> now = outline;
    for (int side = 0; side < 4; side++) {
      int axis = side % 2;
      double sign = side < 2 ? 1 : -1;
      double limit = sign * window[side];
      List<double[]> next = new ArrayList<>();
      for (int i = 0; i < now.size(); i++) {
        double[] a = now.get(i);
        double[] b = now.get((i + 1) % now.size());
        double da = sign * a[axis] - limit;
        double db = sign * b[axis] - limit;
        if (da >= 0) {
          next.add(a);
        }
        if (da * db < 0) {
          double t = da / (da - db);
          next.add(new double[] {a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t});
        }
      }
      now = next;
    }
    return now.size() < 3 ? List.of() : List.copyOf(now);
  }
}
