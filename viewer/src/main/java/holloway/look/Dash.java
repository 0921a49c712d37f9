package holloway.look;

/**
 * What tells runs apart without their colour: how the light stretches of a line alternate with dark
 * ones, in widths of the line. Eight patterns that stay different when they are drawn small.
 */
public enum Dash {
  WHOLE(1, 0, 0, 0),
  LONG(7, 2, 7, 2),
  SHORT(3, 2, 3, 2),
  DOTS(1.2f, 1.8f, 1.2f, 1.8f),
  LONG_SHORT(7, 2, 2, 2),
  SPARSE(3, 5, 3, 5),
  LONG_LONG_GAP(9, 5, 9, 5),
  DOT_GAP(2, 2, 1, 5);

  private final float[] parts;

  Dash(float... parts) {
    this.parts = parts;
  }

  /** On, off, on, off; whole when the offs are nothing. */
  public float[] parts() {
    return parts.clone();
  }

  /** Length after which the pattern begins again, in widths. */
  public float period() {
    return parts[0] + parts[1] + parts[2] + parts[3];
  }

  /** Whether the line is light at a place, in widths from its beginning. */
  public boolean isOn(double along) {
    double t = along % period();
    return t < parts[0] || t >= parts[0] + parts[1] && t < parts[0] + parts[1] + parts[2];
  }
}
