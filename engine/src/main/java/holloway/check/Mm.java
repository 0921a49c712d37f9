package holloway.check;

import holloway.geometry.Point3;
import holloway.geometry.SiteFrame;

/** A point or direction in double millimetres: the referee's own arithmetic. */
record Mm(double x, double y, double z) {
  static Mm of(Point3 p) {
    return new Mm(p.x() / 1e6, p.y() / 1e6, p.z() / 1e6);
  }

  /** The same point in the frame of the house's site. */
  Mm in(SiteFrame site) {
    double c = site.turn().cos();
    double s = site.turn().sin();
    return new Mm(c * x - s * y + site.east() / 1e6, s * x + c * y + site.north() / 1e6, z);
  }

  Mm minus(Mm o) {
    return new Mm(x - o.x, y - o.y, z - o.z);
  }

  Mm plus(Mm o) {
    return new Mm(x + o.x, y + o.y, z + o.z);
  }

  Mm times(double k) {
    return new Mm(x * k, y * k, z * k);
  }

  double dot(Mm o) {
    return x * o.x + y * o.y + z * o.z;
  }

  Mm cross(Mm o) {
    return new Mm(y * o.z - z * o.y, z * o.x - x * o.z, x * o.y - y * o.x);
  }

  double length() {
    return Math.sqrt(dot(this));
  }

  Mm unit() {
    return times(1 / length());
  }

  double to(Mm o) {
    return minus(o).length();
  }

  /** Distance in the floor plan. */
  double planTo(Mm o) {
    return Math.hypot(x - o.x, y - o.y);
  }

  @Override
  public String toString() {
    return String.format(java.util.Locale.ROOT, "[%.1f, %.1f, %.1f]", x, y, z);
  }
}
