package holloway.geometry;

/**
 * A right-handed local frame: an origin in world nanometres and three orthonormal world axes. A
 * wall's u runs along it from its west or south end, v across it and w up; a sloped roof plane
 * tilts u and w.
 */
public record Frame(Point3 origin, Axis u, Axis v, Axis w) {
  /** A unit vector in world axes. */
  public record Axis(double x, double y, double z) {
    public static final Axis EAST = new Axis(1, 0, 0);
    public static final Axis NORTH = new Axis(0, 1, 0);
    public static final Axis WEST = new Axis(-1, 0, 0);
    public static final Axis UP = new Axis(0, 0, 1);

    double dot(double a, double b, double c) {
      return x * a + y * b + z * c;
    }
  }

  public static final Frame WORLD = new Frame(new Point3(0, 0, 0), Axis.EAST, Axis.NORTH, Axis.UP);

  /** A level frame: u along (ux, uy), v a quarter turn to its left, w up. */
  public static Frame level(Point3 origin, double ux, double uy) {
    return new Frame(origin, new Axis(ux, uy, 0), new Axis(-uy, ux, 0), Axis.UP);
  }

  /** u east, v north. */
  public static Frame eastWest(Point3 origin) {
    return level(origin, 1, 0);
  }

  /** u north, v west. */
  public static Frame northSouth(Point3 origin) {
    return level(origin, 0, 1);
  }

  /** Exact when the axes are world axes; else rounded once to the nanometre. */
  public Point3 toWorld(long a, long b, long c) {
    return new Point3(
        origin.x() + Math.round(a * u.x() + b * v.x() + c * w.x()),
        origin.y() + Math.round(a * u.y() + b * v.y() + c * w.y()),
        origin.z() + Math.round(a * u.z() + b * v.z() + c * w.z()));
  }

  public Point3 toWorld(Point3 local) {
    return toWorld(local.x(), local.y(), local.z());
  }

  public Point3 toLocal(Point3 world) {
    double dx = world.x() - origin.x();
    double dy = world.y() - origin.y();
    double dz = world.z() - origin.z();
    return new Point3(
        Math.round(u.dot(dx, dy, dz)),
        Math.round(v.dot(dx, dy, dz)),
        Math.round(w.dot(dx, dy, dz)));
  }
}
