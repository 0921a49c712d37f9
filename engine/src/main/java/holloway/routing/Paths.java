package holloway.routing;

import holloway.geometry.Box;
import holloway.geometry.Interval;
import holloway.geometry.Point3;
import holloway.hollow.Hollow;
import holloway.hollow.Solids;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Square paths inside hollows, and whether a cable on them is clear of everything solid. */
final class Paths {
  /** Half a thick cable. */
  private static final long CABLE = 4_500_000;

  private static final long TRIM = 6_000_000;

  /** A cable that comes in sideways keeps this off the stud it came through. */
  private static final long OFF_STUD = 25_000_000;

  private Paths() {}

  /**
   * From one point of a blind hollow to another: along its length, with sideways shifts where they
   * do no harm.
   */
  static List<Point3> inside(Hollow h, Point3 from, Point3 to) {
    Point3 a = h.frame().toLocal(from);
    Point3 b = h.frame().toLocal(to);
    List<Point3> local =
        switch (h.kind()) {
          case JOIST_BAY, BATTEN_VOID, SERVICE_VOID, PORCH_VOID -> along(h.clear(), a, b);
          case SOFFIT ->
              h.id().startsWith("stairs/") ? upright(h.clear(), a, b) : boxed(h.clear(), a, b);
          default -> upright(h.clear(), a, b);
        };
    List<Point3> out = new ArrayList<>();
    out.add(from);
    for (int i = 1; i + 1 < local.size(); i++) {
      out.add(h.frame().toWorld(local.get(i)));
    }
    out.add(to);
    return tidy(out);
  }

  private static List<Point3> along(Box c, Point3 a, Point3 b) {
    long z = (c.z0() + c.z1()) / 2;
    long v = (c.y0() + c.y1()) / 2;
    return List.of(a, a.withZ(z), new Point3(a.x(), v, z), new Point3(b.x(), v, z), b.withZ(z), b);
  }

  /** Through the middle of a lying box. */
  private static List<Point3> boxed(Box c, Point3 a, Point3 b) {
    List<Point3> out = new ArrayList<>(toMiddle(c, a));
    out.addAll(reversed(toMiddle(c, b)));
    return out;
  }

  /**
   * From a place in a lying box to the line along its middle: first away from the side that it lies
   * on.
   */
  static List<Point3> toMiddle(Box c, Point3 p) {
    long y = c.y().mid();
    long z = c.z().mid();
    boolean inSide = p.y() <= c.y0() + TRIM || p.y() >= c.y1() - TRIM;
    if (p.x() <= c.x0() + TRIM || p.x() >= c.x1() - TRIM) {
      long x = offStuds(c).clamp(p.x());
      Point3 off = new Point3(x, p.y(), p.z());
      return List.of(p, off, off.withZ(z), new Point3(x, y, z));
    }
    Point3 first = inSide ? new Point3(p.x(), y, p.z()) : p.withZ(z);
    return List.of(p, first, new Point3(p.x(), y, z));
  }

  /** Along a bay, as far as it keeps off what bounds it; the middle of a narrow one. */
  private static Interval offStuds(Box c) {
    long off = Math.min(OFF_STUD, c.x().length() / 2);
    return new Interval(c.x0() + off, c.x1() - off);
  }

  private static List<Point3> upright(Box c, Point3 a, Point3 b) {
    boolean endA = a.z() <= c.z0() + TRIM || a.z() >= c.z1() - TRIM;
    boolean endB = b.z() <= c.z0() + TRIM || b.z() >= c.z1() - TRIM;
    long z = endA ? endB ? a.z() + (b.z() - a.z()) / 2 : b.z() : a.z();
    if (!endA && !endB) {
      long s = offStuds(c).clamp(a.x());
      long t = (c.y0() + c.y1()) / 2;
      return List.of(
          a,
          new Point3(a.x(), t, a.z()),
          new Point3(s, t, a.z()),
          new Point3(s, t, b.z()),
          new Point3(b.x(), t, b.z()),
          b);
    }
    return List.of(a, a.withZ(z), new Point3(b.x(), a.y(), z), b.withZ(z), b);
  }

  /** Without repeated points and without points on a straight stretch. */
  static List<Point3> tidy(List<Point3> path) {
    List<Point3> out = new ArrayList<>();
    for (Point3 p : path) {
      if (out.isEmpty() || !out.get(out.size() - 1).equals(p)) {
        out.add(p);
      }
    }
    for (int i = out.size() - 2; i > 0; i--) {
      if (straight(out.get(i - 1), out.get(i), out.get(i + 1))) {
        out.remove(i);
      }
    }
    if (out.size() == 1) {
      out.add(out.get(0));
    }
    return List.copyOf(out);
  }

  private static boolean straight(Point3 a, Point3 b, Point3 c) {
    return Math.abs(a.distanceTo(b) + b.distanceTo(c) - a.distanceTo(c)) <= 2;
  }

  /**
   * True when a cable on this path meets nothing solid, its very ends (in a bore or a cut-out) left
   * out.
   */
  static boolean clear(Solids solids, List<Point3> path) {
    for (int i = 0; i + 1 < path.size(); i++) {
      Point3 a = path.get(i);
      Point3 b = path.get(i + 1);
      long length = a.distanceTo(b);
      long cutA = i == 0 ? TRIM : 0;
      long cutB = i + 2 == path.size() ? TRIM : 0;
      if (length > cutA + cutB + 1_000_000
          && !solids.free(at(a, b, cutA, length), at(a, b, length - cutB, length), CABLE)) {
        return false;
      }
    }
    return true;
  }

  private static Point3 at(Point3 a, Point3 b, long d, long length) {
    double f = d / (double) length;
    return new Point3(
        a.x() + Math.round(f * (b.x() - a.x())),
        a.y() + Math.round(f * (b.y() - a.y())),
        a.z() + Math.round(f * (b.z() - a.z())));
  }

  static List<Point3> reversed(List<Point3> path) {
    List<Point3> out = new ArrayList<>(path);
    Collections.reverse(out);
    return out;
  }
}
