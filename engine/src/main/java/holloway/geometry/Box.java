package holloway.geometry;

/**
 * An axis-parallel box of a {@link Frame} in nanometres; each upper bound is at least its lower
 * bound.
 */
public record Box(long x0, long x1, long y0, long y1, long z0, long z1) {
  public Box {
    if (x1 < x0 || y1 < y0 || z1 < z0) {
      throw new IllegalArgumentException(
          "box turned inside out: x %d..%d y %d..%d z %d..%d".formatted(x0, x1, y0, y1, z0, z1));
    }
  }

  public Interval x() {
    return new Interval(x0, x1);
  }

  public Interval y() {
    return new Interval(y0, y1);
  }

  public Interval z() {
    return new Interval(z0, z1);
  }

  public boolean overlaps(Box o) {
    return x0 < o.x1 && o.x0 < x1 && y0 < o.y1 && o.y0 < y1 && z0 < o.z1 && o.z0 < z1;
  }

  public boolean contains(Point3 p, long slack) {
    return x0 - slack <= p.x()
        && p.x() <= x1 + slack
        && y0 - slack <= p.y()
        && p.y() <= y1 + slack
        && z0 - slack <= p.z()
        && p.z() <= z1 + slack;
  }

  public Point3 centre() {
    return new Point3((x0 + x1) / 2, (y0 + y1) / 2, (z0 + z1) / 2);
  }
}
