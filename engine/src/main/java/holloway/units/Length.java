package holloway.units;

/**
 * A length as a whole number of nanometres, so that 1/64 in (396 875 nm) is exact and sums never
 * drift.
 *
 * @param nm nanometres, may be negative
 */
public record Length(long nm) implements Comparable<Length> {
  public static final long NM_PER_MM = 1_000_000L;
  public static final long NM_PER_INCH = 25_400_000L;
  public static final Length ZERO = new Length(0);

  public static Length mm(long millimetres) {
    return new Length(Math.multiplyExact(millimetres, NM_PER_MM));
  }

  /** Rounded to the nearest nanometre. */
  public static Length mm(double millimetres) {
    return new Length(Math.round(millimetres * NM_PER_MM));
  }

  /** {@code n / d} inches; d is a power of two up to 64, so the result is exact. */
  public static Length inches(long n, int d) {
    return new Length(Math.multiplyExact(n, NM_PER_INCH) / d);
  }

  public static Length inches(long n) {
    return inches(n, 1);
  }

  public static Length feet(long n) {
    return inches(12 * n, 1);
  }

  public Length plus(Length other) {
    return new Length(Math.addExact(nm, other.nm));
  }

  public Length minus(Length other) {
    return new Length(Math.subtractExact(nm, other.nm));
  }

  public double toMm() {
    return nm / (double) NM_PER_MM;
  }

  public double toMetres() {
    return nm / (1000.0 * NM_PER_MM);
  }

  @Override
  public int compareTo(Length other) {
    return Long.compare(nm, other.nm);
  }

  @Override
  public String toString() {
    return LengthText.metric(this);
  }
}
