package holloway.limits;

import holloway.geometry.Point3;
import java.util.ArrayList;
import java.util.List;

/** A path as straight stretches: points on top of each other left out, stretches in line joined. */
public record Stretches(List<Point3> points) {
  public static Stretches of(List<Point3> path) {
    List<Point3> out = new ArrayList<>();
    for (Point3 p : path) {
      if (!out.isEmpty() && out.get(out.size() - 1).equals(p)) {
        continue;
      }
      int n = out.size();
      if (n >= 2
          && new Stretches(List.of(out.get(n - 2), out.get(n - 1), p)).angleAfter(0) < 1e-6) {
        out.remove(n - 1);
      }
      out.add(p);
    }
    return new Stretches(List.copyOf(out));
  }

  /** How many straight stretches. */
  public int size() {
    return Math.max(0, points.size() - 1);
  }

  public double metres(int i) {
    return points.get(i).distanceTo(points.get(i + 1)) / 1e9;
  }

  public double rise(int i) {
    return (points.get(i + 1).z() - points.get(i).z()) / 1e9;
  }

  private double[] direction(int i) {
    Point3 a = points.get(i);
    Point3 b = points.get(i + 1);
    double m = metres(i) * 1e9;
    return new double[] {(b.x() - a.x()) / m, (b.y() - a.y()) / m, (b.z() - a.z()) / m};
  }

  /** Radians turned between a stretch and the next. */
  public double angleAfter(int i) {
    double[] a = direction(i);
    double[] b = direction(i + 1);
    double cos = a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    return Math.acos(Math.max(-1, Math.min(1, cos)));
  }
}
