package holloway.check;

import holloway.geometry.Point2;
import holloway.geometry.Polygon2;
import java.util.List;
import java.util.TreeSet;

/** A floor-plan outline in double millimetres. */
final class Outline {
  private final double[] x;
  private final double[] y;

  Outline(Polygon2 polygon) {
    List<Point2> c = polygon.corners();
    x = c.stream().mapToDouble(p -> p.x() / 1e6).toArray();
    y = c.stream().mapToDouble(p -> p.y() / 1e6).toArray();
  }

  /** From a spot outside it to its border, or from one within; millimetres in plan. */
  double distance(double px, double py) {
    double least = Double.MAX_VALUE;
    for (int i = 0; i < x.length; i++) {
      int j = (i + 1) % x.length;
      double ex = x[j] - x[i];
      double ey = y[j] - y[i];
      double along = ((px - x[i]) * ex + (py - y[i]) * ey) / (ex * ex + ey * ey);
      double t = Math.max(0, Math.min(1, along));
      least = Math.min(least, Math.hypot(px - x[i] - t * ex, py - y[i] - t * ey));
    }
    return least;
  }

  /** Between two outlines that do not touch: a corner of one is nearest to the other. */
  double distance(Outline other) {
    double least = Double.MAX_VALUE;
    for (int i = 0; i < x.length; i++) {
      least = Math.min(least, other.distance(x[i], y[i]));
    }
    for (int i = 0; i < other.x.length; i++) {
      least = Math.min(least, distance(other.x[i], other.y[i]));
    }
    return least;
  }

  /** True when a part of the stretch longer than {@code slack} lies within the outline. */
  boolean entered(Span span, double slack) {
    TreeSet<Double> cuts = new TreeSet<>(List.of(0.0, 1.0));
    for (int i = 0; i < x.length; i++) {
      addCut(cuts, span, i, (i + 1) % x.length);
    }
    Double from = null;
    for (double to : cuts) {
      if (from != null
          && inside(span.at((from + to) / 2))
          && span.at(from).planTo(span.at(to)) > slack) {
        return true;
      }
      from = to;
    }
    return false;
  }

  /**
   * True when no part of the stretch leaves the outline by more than {@code slack}: between two
   * crossings of the border a stretch is wholly inside or wholly outside, so the middle of each
   * part tells.
   */
  boolean holds(Span span, double slack) {
    TreeSet<Double> cuts = new TreeSet<>(List.of(0.0, 1.0));
    for (int i = 0; i < x.length; i++) {
      addCut(cuts, span, i, (i + 1) % x.length);
    }
    Double from = null;
    for (double to : cuts) {
      if (from != null && !near(span.at((from + to) / 2), slack)) {
        return false;
      }
      from = to;
    }
    return near(span.a(), slack) && near(span.b(), slack);
  }

  private void addCut(TreeSet<Double> cuts, Span s, int i, int j) {
    double dx = s.b().x() - s.a().x();
    double dy = s.b().y() - s.a().y();
    double ex = x[j] - x[i];
    double ey = y[j] - y[i];
    double den = dx * ey - dy * ex;
    if (Math.abs(den) < 1e-9) {
      return;
    }
    double t = ((x[i] - s.a().x()) * ey - (y[i] - s.a().y()) * ex) / den;
    if (t > 0 && t < 1) {
      cuts.add(t);
    }
  }

  /** True within the outline and up to {@code slack} beside it. */
  boolean near(Mm p, double slack) {
    if (inside(p)) {
      return true;
    }
    for (int i = 0; i < x.length; i++) {
      int j = (i + 1) % x.length;
      Span edge = new Span(new Mm(x[i], y[i], 0), new Mm(x[j], y[j], 0));
      if (edge.planDistance(p) <= slack) {
        return true;
      }
    }
    return false;
  }

  private boolean inside(Mm p) {
    boolean in = false;
    for (int i = 0, j = x.length - 1; i < x.length; j = i++) {
      boolean spans = y[i] > p.y() != y[j] > p.y();
      if (spans && p.x() < (x[j] - x[i]) * (p.y() - y[i]) / (y[j] - y[i]) + x[i]) {
        in = !in;
      }
    }
    return in;
  }
}
