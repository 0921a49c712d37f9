package holloway.check;

import holloway.framing.Attic;
import holloway.geometry.Point2;
import holloway.geometry.Polygon2;
import holloway.house.Along;
import holloway.house.Roof;
import holloway.house.Side;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A way that was stated from one attic into another, measured on the wall that both rest on, in the
 * referee's own millimetres.
 */
record AtticWay(Attic from, Attic to, Roof.Join join) {
  /** Clear height that a body crawls through and length of an arm; both from experience. */
  private static final double BODY_MM = 600;

  private static final double ARM_MM = 600;

  /** The first roof runs onto the second. */
  boolean isValley() {
    return join.valley().isPresent();
  }

  /** The common wall runs north-south. */
  boolean northSouth() {
    return common(false)[1] - common(false)[0] > common(true)[1] - common(true)[0];
  }

  /** The point lies in the stretch of the common wall that the opening takes, and not over it. */
  boolean holds(Mm p, double slackMm) {
    double along = northSouth() ? p.y() : p.x();
    double across = northSouth() ? p.x() : p.y();
    double[] open = stretch();
    double[] thick = common(northSouth());
    return p.z() <= sill() + high() + slackMm
        && along >= open[0] - slackMm
        && along <= open[1] + slackMm
        && across >= thick[0] - slackMm
        && across <= thick[1] + slackMm;
  }

  /** Somebody under the upper roof's slope, within the lower attic, gets an arm to this point. */
  boolean reaches(Mm p) {
    if (!isValley() || join.shut() || high() < BODY_MM) {
      return false;
    }
    double[] thick = common(northSouth());
    var deep = northSouth() ? to.outline().xRange() : to.outline().yRange();
    double across = northSouth() ? p.x() : p.y();
    boolean near = Math.max(thick[0] - across, across - thick[1]) < deep.length() / 1e6 / 2;
    double along = northSouth() ? p.y() : p.x();
    double[] open = stretch();
    double lo = Math.max(open[0], along - ARM_MM);
    double hi = Math.min(open[1], along + ARM_MM);
    if (!near || lo > hi) {
      return false;
    }
    Slopes upper = new Slopes(from);
    for (double at = lo; at <= hi; at += 10) {
      Mm there = northSouth() ? new Mm(p.x(), at, 0) : new Mm(at, p.y(), 0);
      if (upper.underside(there) - sill() >= BODY_MM) {
        return true;
      }
    }
    return false;
  }

  private double sill() {
    return Math.max(from.chordTopZ(), to.chordTopZ()) / 1e6;
  }

  /** A valley that was cut through ends at the slopes alone. */
  private double high() {
    return isWhole() ? 1e9 : join.high().toMm();
  }

  private boolean isWhole() {
    return isValley() && join.wide().nm() == 0;
  }

  private double[] stretch() {
    double[] wall = wall();
    if (isWhole()) {
      return wall;
    }
    double wide = join.wide().toMm();
    double near = (wall[0] + wall[1] - wide) / 2;
    if (join.from().isPresent()) {
      Along taped = join.from().get();
      boolean low = taped.from() == Side.SOUTH || taped.from() == Side.WEST;
      double off = taped.distance().value().toMm();
      near = low ? wall[0] + off : wall[1] - off - wide;
    }
    return new double[] {near, near + wide};
  }

  /** The common wall from end to end: what lies under both attics along its middle. */
  private double[] wall() {
    double[] thick = common(northSouth());
    double mid = (thick[0] + thick[1]) / 2;
    double[] best = {0, 0};
    for (double[] a : inside(from.outline(), mid)) {
      for (double[] b : inside(to.outline(), mid)) {
        double[] both = {Math.max(a[0], b[0]), Math.min(a[1], b[1])};
        best = both[1] - both[0] > best[1] - best[0] ? both : best;
      }
    }
    return best;
  }

  /** Where a line along the wall runs within an outline. */
  private List<double[]> inside(Polygon2 outline, double across) {
    List<Double> ends = new ArrayList<>();
    List<Point2> corners = outline.corners();
    for (int i = 0; i < corners.size(); i++) {
      Point2 p = corners.get(i);
      Point2 q = corners.get((i + 1) % corners.size());
      double tp = (northSouth() ? p.x() : p.y()) / 1e6;
      double tq = (northSouth() ? q.x() : q.y()) / 1e6;
      double sp = (northSouth() ? p.y() : p.x()) / 1e6;
      double sq = (northSouth() ? q.y() : q.x()) / 1e6;
      if (tp > across != tq > across) {
        ends.add(sp + (sq - sp) * (across - tp) / (tq - tp));
      }
    }
    Collections.sort(ends);
    List<double[]> out = new ArrayList<>();
    for (int i = 1; i < ends.size(); i += 2) {
      out.add(new double[] {ends.get(i - 1), ends.get(i)});
    }
    return out;
  }

  private double[] common(boolean x) {
    var a = x ? from.outline().xRange() : from.outline().yRange();
    var b = x ? to.outline().xRange() : to.outline().yRange();
    return new double[] {Math.max(a.lo(), b.lo()) / 1e6, Math.min(a.hi(), b.hi()) / 1e6};
  }
}
