package holloway.housefile.draft;

import holloway.units.Length;
import java.math.BigDecimal;

/** Lengths as a person would write them into a house file; exact on a grid of 0.1 mm or 1/64 in. */
final class TapeText {
  private static final long SIXTY_FOURTHS_PER_FOOT = 12 * 64;

  private final boolean metric;

  TapeText(boolean metric) {
    this.metric = metric;
  }

  String of(Length length) {
    return metric ? metres(length.nm()) : feet(length.nm());
  }

  private static String metres(long nm) {
    boolean small = Math.abs(nm) < 1000 * Length.NM_PER_MM;
    BigDecimal value = BigDecimal.valueOf(nm, small ? 6 : 9).stripTrailingZeros();
    return value.signum() == 0 ? "0 mm" : value.toPlainString() + (small ? " mm" : " m");
  }

  private static String feet(long nm) {
    long parts = Math.round(nm * 64.0 / Length.NM_PER_INCH);
    String sign = parts < 0 ? "-" : "";
    parts = Math.abs(parts);
    long feet = parts / SIXTY_FOURTHS_PER_FOOT;
    long rest = parts % SIXTY_FOURTHS_PER_FOOT;
    String inches = inches(rest / 64, rest % 64);
    if (feet == 0) {
      return sign + inches;
    }
    return sign + feet + " ft" + (rest == 0 ? "" : " " + inches);
  }

  private static String inches(long whole, long parts) {
    if (parts == 0) {
      return whole + " in";
    }
    int shift = Long.numberOfTrailingZeros(parts);
    String fraction = (parts >> shift) + "/" + (64 >> shift) + " in";
    return whole == 0 ? fraction : whole + "-" + fraction;
  }
}
