package holloway.geometry;

/**
 * A point in nanometres: x east, y north, z up. World coordinates unless a {@link Frame} says
 * otherwise.
 */
public record Point3(long x, long y, long z) implements Comparable<Point3> {
  public Point2 plan() {
    return new Point2(x, y);
  }

  public Point3 withZ(long newZ) {
    return new Point3(x, y, newZ);
  }

  /** Straight-line distance in nanometres, computed in double millimetres. */
  public long distanceTo(Point3 o) {
    double dx = (x - o.x) / 1e6;
    double dy = (y - o.y) / 1e6;
    double dz = (z - o.z) / 1e6;
    return Math.round(Math.sqrt(dx * dx + dy * dy + dz * dz) * 1e6);
  }

  @Override
  public int compareTo(Point3 o) {
    if (z != o.z) {
      return Long.compare(z, o.z);
    }
    return plan().compareTo(o.plan());
  }
}
