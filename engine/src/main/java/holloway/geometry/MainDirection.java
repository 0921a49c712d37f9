package holloway.geometry;

import java.util.List;

/**
 * The direction that most of a plan's walls run along or square to.
 *
 * @param radians off the axes, counter-clockwise, over -45 to 45 degrees; of equals that of the
 *     edge that comes first
 * @param share of the length of all edges that run so, 0 to 1
 */
public record MainDirection(double radians, double share) {
  /** Directions closer than this count as one. */
  public static final double SAME = Math.toRadians(0.05);

  private static final double QUARTER = Math.PI / 2;

  /** More edges than that are only weighed, not tried. */
  private static final int TRIED = 2_000;

  /** A stretch of wall from one end to the other, millimetres. */
  public record Edge(double dx, double dy) {
    double length() {
      return Math.sqrt(dx * dx + dy * dy);
    }

    /** From 0 to a quarter. */
    double angle() {
      double angle = StrictMath.atan2(dy, dx);
      return angle - QUARTER * Math.floor(angle / QUARTER);
    }
  }

  private record Run(double angle, double length) {}

  public static MainDirection of(List<Edge> edges) {
    List<Run> runs = edges.stream().map(e -> new Run(e.angle(), e.length())).toList();
    double best = -1;
    double turn = 0;
    for (Run r : runs.subList(0, Math.min(TRIED, runs.size()))) {
      double[] found = alike(runs, r.angle);
      if (found[0] > best + 1e-6) {
        best = found[0];
        turn = found[1];
      }
    }
    double whole = runs.stream().mapToDouble(Run::length).sum();
    return new MainDirection(
        turn > QUARTER / 2 ? turn - QUARTER : turn, whole > 0 ? Math.max(0, best) / whole : 0);
  }

  /** The share of edges that run along that direction or square to it. */
  public static double shareOf(List<Edge> edges, double radians) {
    List<Run> runs = edges.stream().map(e -> new Run(e.angle(), e.length())).toList();
    double whole = runs.stream().mapToDouble(Run::length).sum();
    return whole > 0 ? alike(runs, radians)[0] / whole : 0;
  }

  /** The length of all runs within a hair of that angle or square to it, and their mean angle. */
  private static double[] alike(List<Run> runs, double angle) {
    double length = 0;
    double off = 0;
    for (Run r : runs) {
      double d = Math.IEEEremainder(r.angle - angle, QUARTER);
      if (Math.abs(d) <= SAME) {
        length += r.length;
        off += d * r.length;
      }
    }
    return new double[] {length, angle + (length > 0 ? off / length : 0)};
  }
}
