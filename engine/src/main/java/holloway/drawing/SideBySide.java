package holloway.drawing;

import holloway.geometry.Frame.Axis;
import holloway.geometry.Point3;
import holloway.plan.Plan;
import holloway.survey.Placed;
import holloway.survey.Wall;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Where a leg is drawn when several share its way: cable on a face keeps to its own side of the
 * wall, cable in a wall is spread along the wall, the rest aslant.
 */
final class SideBySide {
  /** All runs together are spread this wide at most, millimetres; else two of them so far apart. */
  private static final double WIDEST = 600;

  private static final double APART = 50;

  private static final double IN_WALL = 120;

  private SideBySide() {}

  /**
   * On the sheet, millimetres.
   *
   * @param run number of the run, from 0, of so many {@code runs}
   */
  static double[] of(Plan.PlanStep leg, int run, int runs, Placed placed) {
    double part = runs == 1 ? 0 : 2.0 * run / (runs - 1) - 1;
    String space = leg.hollow().orElse("");
    double wide = Math.min(WIDEST, APART * (runs - 1)) / 2;
    return switch (space) {
      case "outside face", "open room surface" -> {
        double[] away = away(leg.path(), placed);
        double out = wide * (part + 1);
        yield new double[] {away[0] * out, away[1] * out};
      }
      case "stud bay" -> {
        Point3 first = leg.path().get(0);
        Axis u = nearest(first, placed).map(w -> w.frame().u()).orElse(Axis.EAST);
        double along = IN_WALL / 2 * part;
        yield new double[] {u.x() * along, -u.y() * along};
      }
      default -> new double[] {wide * part, wide * part};
    };
  }

  /** Away from every wall that the leg runs beside; nothing where these contradict. */
  private static double[] away(List<Point3> path, Placed placed) {
    double x = 0;
    double y = 0;
    double seenX = 0;
    double seenY = 0;
    for (int i = 1; i < path.size(); i++) {
      Point3 a = path.get(i - 1);
      Point3 b = path.get(i);
      Point3 mid = new Point3((a.x() + b.x()) / 2, (a.y() + b.y()) / 2, (a.z() + b.z()) / 2);
      Optional<Wall> wall = nearest(mid, placed);
      if (wall.isEmpty() || (a.x() == b.x() && a.y() == b.y() && path.size() > 2)) {
        continue;
      }
      Axis v = wall.get().frame().v();
      long t = wall.get().frame().toLocal(mid).y();
      int sign = t < wall.get().thickness() / 2 ? -1 : 1;
      boolean one = Math.abs(v.x()) > Math.abs(v.y());
      double way = sign * (one ? v.x() : -v.y());
      boolean turned = one ? seenX * way < 0 : seenY * way < 0;
      if (turned) {
        return new double[] {0, 0};
      }
      if (one) {
        seenX = way;
        x = sign * v.x();
        y = seenY == 0 ? -sign * v.y() : y;
      } else {
        seenY = way;
        y = -sign * v.y();
        x = seenX == 0 ? sign * v.x() : x;
      }
    }
    return new double[] {x, y};
  }

  /** The wall of that storey whose strip lies nearest, in plan. */
  private static Optional<Wall> nearest(Point3 p, Placed placed) {
    return placed.walls().stream()
        .filter(w -> p.z() >= w.frame().origin().z() - 500_000_000L)
        .filter(w -> p.z() <= w.frame().origin().z() + w.height() + 500_000_000L)
        .min(Comparator.comparingDouble((Wall w) -> apart(p, w)).thenComparing(Wall::id));
  }

  private static double apart(Point3 p, Wall w) {
    Point3 local = w.frame().toLocal(p);
    double s = Math.max(0, Math.max(-local.x(), local.x() - w.length()));
    double t = Math.max(0, Math.max(-local.y(), local.y() - w.thickness()));
    return Math.hypot(s, t);
  }
}
