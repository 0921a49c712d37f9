package holloway.check;

import java.util.ArrayList;
import java.util.List;

/**
 * A bore: a cylinder with flat ends. What it meets of a box is the box cut to the stretch between
 * the ends, seen along the axis; it is hit when that outline comes nearer to the axis than the
 * radius.
 */
final class Bored {
  /** Cuts that touch by less than this are not hits. */
  private static final double SLACK = 1;

  private final Mm from;
  private final Mm along;
  private final Mm side;
  private final Mm up;
  private final double length;
  private final double radius;

  Bored(Span axis, double diameterMm) {
    from = axis.a();
    length = axis.length();
    along = axis.b().minus(axis.a()).unit();
    Mm other = Math.abs(along.z()) < 0.9 ? new Mm(0, 0, 1) : new Mm(1, 0, 0);
    side = along.cross(other).unit();
    up = along.cross(side);
    radius = diameterMm / 2;
  }

  boolean hits(Solid solid) {
    List<double[]> seen = seenAlongAxis(solid);
    return !seen.isEmpty() && distanceFromAxis(seen) < radius - SLACK;
  }

  /** Corners of the cut box, and where its edges pass the two end planes, as (side, up). */
  private List<double[]> seenAlongAxis(Solid solid) {
    List<double[]> out = new ArrayList<>();
    double[] planes = {Math.min(SLACK, length / 4), length - Math.min(SLACK, length / 4)};
    for (int i = 0; i < 8; i++) {
      Mm p = solid.corner(i).minus(from);
      double s = p.dot(along);
      if (s >= planes[0] && s <= planes[1]) {
        out.add(flat(p));
      }
      for (int bit = 1; bit < 8; bit <<= 1) {
        if ((i & bit) == 0) {
          addCuts(out, p, solid.corner(i | bit).minus(from), planes);
        }
      }
    }
    return out;
  }

  private void addCuts(List<double[]> out, Mm p, Mm q, double[] planes) {
    double s = p.dot(along);
    double t = q.dot(along);
    for (double plane : planes) {
      if ((s - plane) * (t - plane) < 0) {
        out.add(flat(p.plus(q.minus(p).times((plane - s) / (t - s)))));
      }
    }
  }

  private double[] flat(Mm p) {
    return new double[] {p.dot(side), p.dot(up)};
  }

  /** Distance from the origin to the convex hull of the points, 0 inside. */
  private static double distanceFromAxis(List<double[]> points) {
    if (surrounded(points)) {
      return 0;
    }
    double least = Double.POSITIVE_INFINITY;
    for (double[] p : points) {
      for (double[] q : points) {
        Span edge = new Span(new Mm(p[0], p[1], 0), new Mm(q[0], q[1], 0));
        least = Math.min(least, edge.planDistance(new Mm(0, 0, 0)));
      }
    }
    return least;
  }

  /** True when no half plane through the origin holds all points: no gap of half a turn. */
  private static boolean surrounded(List<double[]> points) {
    double[] turn = points.stream().mapToDouble(p -> Math.atan2(p[1], p[0])).sorted().toArray();
    double widest = turn[0] + 2 * Math.PI - turn[turn.length - 1];
    for (int i = 1; i < turn.length; i++) {
      widest = Math.max(widest, turn[i] - turn[i - 1]);
    }
    return widest < Math.PI;
  }
}
