package holloway.check;

/** A straight stretch in millimetres. */
record Span(Mm a, Mm b) {
  double length() {
    return a.to(b);
  }

  Mm at(double t) {
    return a.plus(b.minus(a).times(t));
  }

  /** Least distance to another stretch, by the closest points of two lines clamped to both. */
  double distanceTo(Span o) {
    Mm d1 = b.minus(a);
    Mm d2 = o.b.minus(o.a);
    Mm r = a.minus(o.a);
    double aa = d1.dot(d1);
    double ee = d2.dot(d2);
    double f = d2.dot(r);
    double c = d1.dot(r);
    double bb = d1.dot(d2);
    double den = aa * ee - bb * bb;
    double s = den > 1e-9 ? clamp((bb * f - c * ee) / den) : 0;
    double t = ee > 1e-12 ? clamp((bb * s + f) / ee) : 0;
    s = aa > 1e-12 ? clamp((bb * t - c) / aa) : 0;
    return at(s).to(o.at(t));
  }

  /** Least distance in the floor plan from a point to this stretch. */
  double planDistance(Mm p) {
    double dx = b.x() - a.x();
    double dy = b.y() - a.y();
    double square = dx * dx + dy * dy;
    double t = square < 1e-12 ? 0 : clamp(((p.x() - a.x()) * dx + (p.y() - a.y()) * dy) / square);
    return Math.hypot(p.x() - a.x() - t * dx, p.y() - a.y() - t * dy);
  }

  private static double clamp(double t) {
    return Math.max(0, Math.min(1, t));
  }
}
