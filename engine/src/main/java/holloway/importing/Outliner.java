package holloway.importing;

import holloway.geometry.Point2;
import holloway.geometry.Polygon2;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;

/** From corners in millimetres to an outline on the grid, without slips and needless corners. */
final class Outliner {
  /** Corners this near on one axis are in line, millimetres. */
  private static final double SAME = 1;

  /** A corner this near to the line between its neighbours is none, millimetres. */
  private static final double STRAIGHT = 0.6;

  /** As a house file has it. */
  private static final int MOST_CORNERS = 200;

  private static final double LEAST_MM2 = 250_000;

  private final Grid grid;

  Outliner(Grid grid) {
    this.grid = grid;
  }

  Polygon2 outline(List<Vec> corners) {
    Map<Double, Double> xs = snapped(corners, Vec::x);
    Map<Double, Double> ys = snapped(corners, Vec::y);
    List<Vec> c = new ArrayList<>();
    corners.forEach(v -> c.add(new Vec(xs.get(v.x()), ys.get(v.y()), 0)));
    boolean dropped = true;
    while (dropped && c.size() > 2) {
      dropped = dropOne(c);
    }
    if (c.size() < 3) {
      throw new Unreadable("its outline holds no room");
    }
    if (c.size() > MOST_CORNERS) {
      throw new Unreadable("its outline has more than " + MOST_CORNERS + " corners");
    }
    List<Point2> points = c.stream().map(v -> new Point2(grid.of(v.x()), grid.of(v.y()))).toList();
    Polygon2 p = new Polygon2(points).counterClockwise();
    boolean sound = new HashSet<>(points).size() == points.size() && p.toJts().isValid();
    if (!sound || p.signedAreaMm2() < LEAST_MM2) {
      throw new Unreadable("its outline " + (sound ? "holds no room" : "crosses itself"));
    }
    return p;
  }

  /** Each position and the first of its chain of near ones. */
  private static Map<Double, Double> snapped(List<Vec> c, ToDoubleFunction<Vec> axis) {
    TreeSet<Double> all = new TreeSet<>();
    c.forEach(v -> all.add(axis.applyAsDouble(v)));
    Map<Double, Double> out = new TreeMap<>();
    double first = all.first();
    for (double v : all) {
      if (v - first > SAME) {
        first = v;
      }
      out.put(v, first);
    }
    return out;
  }

  private static boolean dropOne(List<Vec> c) {
    for (int i = 0; i < c.size(); i++) {
      Vec a = c.get((i + c.size() - 1) % c.size());
      Vec b = c.get(i);
      Vec d = c.get((i + 1) % c.size());
      double span = d.minus(a).length();
      double off = span > 0 ? Math.abs(b.minus(a).cross(d.minus(a)).z()) / span : 0;
      if (b.minus(a).length() < 1e-9 || off < STRAIGHT) {
        c.remove(i);
        return true;
      }
    }
    return false;
  }
}
