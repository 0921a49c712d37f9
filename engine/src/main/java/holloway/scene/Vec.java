package holloway.scene;

import holloway.geometry.Frame;
import holloway.geometry.Point3;

/** A point or direction in world millimetres. */
public record Vec(double x, double y, double z) {
  static final Vec EAST = new Vec(1, 0, 0);
  static final Vec UP = new Vec(0, 0, 1);

  static Vec of(Point3 p) {
    return new Vec(p.x() / 1e6, p.y() / 1e6, p.z() / 1e6);
  }

  static Vec of(Frame.Axis a) {
    return new Vec(a.x(), a.y(), a.z());
  }

  public Vec plus(Vec o) {
    return new Vec(x + o.x, y + o.y, z + o.z);
  }

  public Vec minus(Vec o) {
    return new Vec(x - o.x, y - o.y, z - o.z);
  }

  public Vec times(double f) {
    return new Vec(x * f, y * f, z * f);
  }

  public Vec cross(Vec o) {
    return new Vec(y * o.z - z * o.y, z * o.x - x * o.z, x * o.y - y * o.x);
  }

  public double dot(Vec o) {
    return x * o.x + y * o.y + z * o.z;
  }

  public double length() {
    return Math.sqrt(x * x + y * y + z * z);
  }

  /** The same direction, one long; of a vector that is not zero. */
  public Vec unit() {
    return times(1 / length());
  }
}
