package holloway.geometry;

import java.util.Locale;

/**
 * How far something stands turned about the vertical, counter-clockwise seen from above.
 *
 * @param nanoDegrees 10^-9 degrees, over -180 to 180 degrees: over the 150 m of the largest house
 *     half of one is less than 2 nm
 */
public record Turn(long nanoDegrees) {
  public static final Turn NONE = new Turn(0);

  private static final long DEGREE = 1_000_000_000L;
  private static final long QUARTER = 90 * DEGREE;

  public Turn {
    nanoDegrees = Math.floorMod(nanoDegrees, 4 * QUARTER);
    nanoDegrees = nanoDegrees > 2 * QUARTER ? nanoDegrees - 4 * QUARTER : nanoDegrees;
  }

  public static Turn degrees(double degrees) {
    return new Turn(Math.round(degrees * DEGREE));
  }

  public boolean isNone() {
    return nanoDegrees == 0;
  }

  public double degrees() {
    return nanoDegrees / (double) DEGREE;
  }

  /** Turned with this about the origin, rounded to the nanometre; quarters are exact. */
  public Point2 of(Point2 p) {
    return turned(p, cos(), sin());
  }

  /** What was turned with this, before it was. */
  public Point2 back(Point2 p) {
    return turned(p, cos(), -sin());
  }

  private static Point2 turned(Point2 p, double c, double s) {
    return new Point2(Math.round(c * p.x() - s * p.y()), Math.round(s * p.x() + c * p.y()));
  }

  public double cos() {
    return quarters() ? new double[] {1, 0, -1, 0}[quarter()] : StrictMath.cos(radians());
  }

  public double sin() {
    return quarters() ? new double[] {0, 1, 0, -1}[quarter()] : StrictMath.sin(radians());
  }

  private boolean quarters() {
    return nanoDegrees % QUARTER == 0;
  }

  private int quarter() {
    return (int) Math.floorMod(nanoDegrees / QUARTER, 4L);
  }

  private double radians() {
    return StrictMath.toRadians(degrees());
  }

  /** As the house file says it: {@code 23.5 deg clockwise}. */
  public String words() {
    String figure = String.format(Locale.ROOT, "%.9f", Math.abs(degrees()));
    return figure.replaceAll("\\.?0+$", "")
        + (nanoDegrees < 0 ? " deg clockwise" : " deg counter-clockwise");
  }
}
