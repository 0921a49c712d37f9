package holloway.units;

import java.util.Locale;

/**
 * Writes lengths the way a tape is read: feet, inches and sixteenths, or metres and millimetres.
 */
public final class LengthText {
  private LengthText() {}

  /** Metres with three decimals from 1 m up, else whole millimetres. */
  public static String metric(Length length) {
    if (Math.abs(length.nm()) >= 1000 * Length.NM_PER_MM) {
      return String.format(Locale.ROOT, "%.3f m", length.toMetres());
    }
    return Math.round(length.toMm()) + " mm";
  }

  /** Feet and inches to the nearest 1/16 in, for example {@code 12 ft 6-1/2 in}. */
  public static String feetInches(Length length) {
    long sixteenths = Math.round(length.nm() * 16.0 / Length.NM_PER_INCH);
    String sign = sixteenths < 0 ? "-" : "";
    sixteenths = Math.abs(sixteenths);
    long feet = sixteenths / 192;
    long inches = sixteenths % 192 / 16;
    String fraction = fraction(sixteenths % 16);
    String inchText =
        fraction.isEmpty() ? "" + inches : inches == 0 ? fraction : inches + "-" + fraction;
    if (feet == 0) {
      return sign + inchText + " in";
    }
    return inchText.equals("0") ? sign + feet + " ft" : sign + feet + " ft " + inchText + " in";
  }

  private static String fraction(long sixteenths) {
    if (sixteenths == 0) {
      return "";
    }
    int shift = Long.numberOfTrailingZeros(sixteenths);
    return (sixteenths >> shift) + "/" + (16 >> shift);
  }
}
