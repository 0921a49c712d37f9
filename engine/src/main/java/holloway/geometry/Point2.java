package holloway.geometry;

/** A point of the floor plan in nanometres: x east, y north. */
public record Point2(long x, long y) implements Comparable<Point2> {
  public Point2 plus(long dx, long dy) {
    return new Point2(x + dx, y + dy);
  }

  public Point3 at(long z) {
    return new Point3(x, y, z);
  }

  @Override
  public int compareTo(Point2 o) {
    return x != o.x ? Long.compare(x, o.x) : Long.compare(y, o.y);
  }
}
