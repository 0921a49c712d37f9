package holloway.survey;

import holloway.geometry.Point2;
import holloway.geometry.Polygon2;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.ToLongFunction;

/**
 * Cleans outlines that came out of overlays: positions nearer than a millimetre to each other are
 * one, corners on a straight line go.
 */
final class Outline {
  private static final long SAME = Length.NM_PER_MM;

  private Outline() {}

  static Polygon2 clean(Polygon2 raw) {
    TreeMap<Long, Long> xs = snapped(raw, Point2::x);
    TreeMap<Long, Long> ys = snapped(raw, Point2::y);
    List<Point2> corners = new ArrayList<>();
    for (Point2 p : raw.corners()) {
      corners.add(new Point2(xs.get(p.x()), ys.get(p.y())));
    }
    boolean changed = true;
    while (changed && corners.size() > 3) {
      changed = dropOne(corners);
    }
    return new Polygon2(corners).counterClockwise();
  }

  /** Each position and the least one of its chain of near ones. */
  private static TreeMap<Long, Long> snapped(Polygon2 raw, ToLongFunction<Point2> axis) {
    TreeSet<Long> all = new TreeSet<>();
    raw.corners().forEach(p -> all.add(axis.applyAsLong(p)));
    TreeMap<Long, Long> out = new TreeMap<>();
    long first = all.first();
    for (long v : all) {
      if (v - first > SAME) {
        first = v;
      }
      out.put(v, first);
    }
    return out;
  }

  private static boolean dropOne(List<Point2> c) {
    for (int i = 0; i < c.size(); i++) {
      Point2 a = c.get((i + c.size() - 1) % c.size());
      Point2 b = c.get(i);
      Point2 d = c.get((i + 1) % c.size());
      double cross =
          ((b.x() - a.x()) / 1e6) * ((d.y() - b.y()) / 1e6)
              - ((b.y() - a.y()) / 1e6) * ((d.x() - b.x()) / 1e6);
      double span = Math.hypot((d.x() - a.x()) / 1e6, (d.y() - a.y()) / 1e6);
      if (Math.abs(cross) <= 1e-3 * Math.max(span, 1e-9) || a.equals(b)) {
        c.remove(i);
        return true;
      }
    }
    return false;
  }
}
