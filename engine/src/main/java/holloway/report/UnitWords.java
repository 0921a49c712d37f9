package holloway.report;

import holloway.house.House;
import holloway.house.RulePlace;
import holloway.limits.Capstan;
import holloway.units.Length;
import holloway.units.UnitSystem;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Map;

/** Lengths, areas, bits and times as a person reads them. */
public final class UnitWords {
  /** The inch bit sold for each step of the bit ladder; the steps are its rounded millimetres. */
  private static final Map<Integer, String> INCH_BITS =
      Map.of(
          3,
          "1/8 in",
          13,
          "1/2 in",
          16,
          "5/8 in",
          19,
          "3/4 in",
          22,
          "7/8 in",
          25,
          "1 in",
          32,
          "1-1/4 in",
          38,
          "1-1/2 in",
          51,
          "2 in");

  private final UnitSystem system;

  public UnitWords(UnitSystem system) {
    this.system = system;
  }

  /** Feet and inches in the US, else metric. */
  public static UnitSystem usual(House house) {
    return house.place() == RulePlace.US ? UnitSystem.FT_IN : UnitSystem.METRIC;
  }

  /** A position or size to a tape's sixteenth of an inch or millimetre. */
  String tape(long nm) {
    return system.format(new Length(nm));
  }

  /** Half of the smallest step that {@link #tape} shows, nanometres. */
  long half() {
    return system == UnitSystem.METRIC ? Length.NM_PER_MM / 2 : Length.NM_PER_INCH / 32;
  }

  /** A length of route or cable in metres, to a tenth of a metre or an inch. */
  String cable(double metres) {
    if (system == UnitSystem.METRIC) {
      return String.format(Locale.ROOT, "%.1f m", metres);
    }
    long inches = Math.round(metres * 1e9 / Length.NM_PER_INCH);
    return system.format(Length.inches(inches));
  }

  /** A length to cut or buy: as {@link #cable}, but never shown shorter than it is. */
  String cut(double metres) {
    BigDecimal m = BigDecimal.valueOf(metres);
    if (system == UnitSystem.METRIC) {
      return m.setScale(1, RoundingMode.CEILING) + " m";
    }
    return system.format(Length.inches(up(m, "0.0254")));
  }

  /** How many of a unit hold a length, the last one whole. */
  private static long up(BigDecimal metres, String unitM) {
    return metres.divide(new BigDecimal(unitM), 0, RoundingMode.CEILING).longValueExact();
  }

  /** An amount of material: metres also in feet where feet are used. */
  String quantity(double quantity, String unit) {
    if (unit.equals("m") && system == UnitSystem.FT_IN) {
      return up(BigDecimal.valueOf(quantity), "0.3048") + " ft";
    }
    String number =
        quantity == Math.rint(quantity)
            ? String.valueOf((long) quantity)
            : String.format(Locale.ROOT, "%.1f", quantity);
    return unit.equals("piece") ? number : number + " " + plural(unit, quantity);
  }

  /** A pull, in pounds or newtons, rounded up. */
  String force(double newtons) {
    return system == UnitSystem.METRIC
        ? (long) Math.ceil(newtons - 1e-6) + " N"
        : (long) Math.ceil(newtons / Capstan.POUND - 1e-6) + " lbf";
  }

  /** What a cable bears, rounded down: the words never allow more than the limit. */
  String mostForce(double newtons) {
    return system == UnitSystem.METRIC
        ? (long) Math.floor(newtons + 1e-6) + " N"
        : (long) Math.floor(newtons / Capstan.POUND + 1e-6) + " lbf";
  }

  String area(double squareMetres) {
    return system == UnitSystem.METRIC
        ? String.format(Locale.ROOT, "%.1f m2", squareMetres)
        : String.format(Locale.ROOT, "%.0f sq ft", squareMetres / 0.09290304);
  }

  /** A bit by the name on its shank. */
  String bit(int diameterMm) {
    String inch = INCH_BITS.get(diameterMm);
    if (system == UnitSystem.FT_IN && inch != null) {
      return inch + " (" + diameterMm + " mm) bit";
    }
    return diameterMm + " mm" + (inch == null ? "" : " (" + inch + ")") + " bit";
  }

  static String minutes(double minutes) {
    long whole = Math.round(minutes);
    if (whole < 60) {
      return whole + " min";
    }
    return whole / 60 + " h" + (whole % 60 == 0 ? "" : " " + whole % 60 + " min");
  }

  static String count(long n, String word) {
    return n + " " + plural(word, n);
  }

  private static String plural(String word, double n) {
    if (n == 1 || word.equals("m")) {
      return word;
    }
    boolean hissing = word.endsWith("s") || word.endsWith("ch") || word.endsWith("x");
    return word + (hissing ? "es" : "s");
  }
}
