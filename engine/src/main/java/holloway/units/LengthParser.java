package holloway.units;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a length as people write it: {@code 12 ft 6 in}, {@code 12' 6 1/2"}, {@code 6-1/2 in},
 * {@code 3.81 m}, {@code 381 cm}, {@code 3810 mm}, with an optional spread {@code 3.81 m +- 10 mm}.
 * Fractions of an inch are halves down to 64ths and come out exact; decimals are rounded to the
 * nanometre.
 */
public final class LengthParser {
  /** What lengths look like, for messages. */
  public static final String EXAMPLES = "12 ft 6 in, 12' 6 1/2\", 3.81 m, 3810 mm";

  /** What is said of a bare number. */
  public static final String EXPECTED = "a length needs a unit: " + EXAMPLES;

  private static final String NUMBER = "\\d+(?:\\.\\d+)?";
  private static final String FOOT = "(?:ft|feet|foot|')";
  private static final String INCH = "(?:inches|inch|in|\")";
  private static final String FRACTION = "\\d+/\\d+";
  private static final String INCHES =
      "(?:" + NUMBER + "|" + FRACTION + "|\\d+[ -]" + FRACTION + ") ?" + INCH;

  /** One length without its spread, as a regular expression that JSON Schema understands too. */
  public static final String PATTERN =
      "-?(?:"
          + (NUMBER + " ?" + FOOT + "(?: ?" + INCHES + ")?")
          + ("|" + INCHES)
          + ("|" + NUMBER + " ?(?:mm|cm|m)")
          + ")";

  private static final Pattern SHAPE =
      Pattern.compile(
          "(?<sign>-?)(?:"
              + ("(?:(?<feet>" + NUMBER + ") ?" + FOOT + ")?")
              + (" ?(?:(?:(?<inches>" + NUMBER + ")|(?:(?<whole>\\d+)[ -])?")
              + ("(?<top>\\d+)/(?<bottom>\\d+)) ?" + INCH + ")?")
              + ("|(?<metric>" + NUMBER + ") ?(?<unit>mm|cm|m)")
              + ")");
  private static final BigDecimal MOST_NM = BigDecimal.valueOf(1_000_000L * Length.NM_PER_MM);

  private LengthParser() {}

  /** A length and the spread (one standard deviation) that the person gave it, if any. */
  public record Taped(Length value, Optional<Length> spread) {}

  /**
   * @throws IllegalArgumentException with a message for the person who wrote the text
   */
  public static Taped parse(String text) {
    String plain = simplify(text);
    int cut = plain.indexOf("+-");
    if (cut < 0) {
      return new Taped(one(plain), Optional.empty());
    }
    Length spread = one(plain.substring(cut + 2).strip());
    if (spread.nm() < 0) {
      throw new IllegalArgumentException("a spread cannot be negative");
    }
    return new Taped(one(plain.substring(0, cut).strip()), Optional.of(spread));
  }

  /** Typographic marks become the plain ones, runs of blanks become one blank. */
  private static String simplify(String text) {
    return text.replace('\u2032', '\'')
        .replace('\u2019', '\'')
        .replace('\u2033', '"')
        .replace('\u201d', '"')
        .replace("''", "\"")
        .replace("\u00b1", "+-")
        .replace("+/-", "+-")
        .replace('\u2212', '-')
        .replaceAll("\\s+", " ")
        .strip();
  }

  private static Length one(String text) {
    Matcher m = SHAPE.matcher(text);
    boolean whole = m.matches();
    if (!whole || text.isEmpty() || text.equals("-")) {
      throw new IllegalArgumentException(advice(text));
    }
    BigDecimal nm = m.group("metric") != null ? metric(m) : imperial(m);
    if (nm.compareTo(MOST_NM) > 0) {
      throw new IllegalArgumentException("nothing in a house is longer than 1000 m");
    }
    long magnitude = nm.setScale(0, RoundingMode.HALF_EVEN).longValueExact();
    return new Length(m.group("sign").isEmpty() ? magnitude : -magnitude);
  }

  private static BigDecimal metric(Matcher m) {
    long unit =
        switch (m.group("unit")) {
          case "mm" -> Length.NM_PER_MM;
          case "cm" -> 10 * Length.NM_PER_MM;
          default -> 1000 * Length.NM_PER_MM;
        };
    return new BigDecimal(m.group("metric")).multiply(BigDecimal.valueOf(unit));
  }

  private static BigDecimal imperial(Matcher m) {
    BigDecimal inches = inches(m);
    if (m.group("feet") == null) {
      return inches.multiply(BigDecimal.valueOf(Length.NM_PER_INCH));
    }
    BigDecimal twelve = BigDecimal.valueOf(12);
    if (inches.compareTo(twelve) >= 0) {
      throw new IllegalArgumentException("after feet the inches must be less than 12");
    }
    return new BigDecimal(m.group("feet"))
        .multiply(twelve)
        .add(inches)
        .multiply(BigDecimal.valueOf(Length.NM_PER_INCH));
  }

  private static BigDecimal inches(Matcher m) {
    if (m.group("inches") != null) {
      return new BigDecimal(m.group("inches"));
    }
    if (m.group("top") == null) {
      return BigDecimal.ZERO;
    }
    BigDecimal top = new BigDecimal(m.group("top"));
    BigDecimal bottom = new BigDecimal(m.group("bottom"));
    boolean tapeFraction =
        bottom.compareTo(BigDecimal.valueOf(64)) <= 0 && Long.bitCount(bottom.longValue()) == 1;
    if (!tapeFraction || top.compareTo(bottom) >= 0) {
      throw new IllegalArgumentException(
          "a fraction of an inch is in halves, quarters, 8ths, 16ths, 32nds or 64ths and less than"
              + " one, not "
              + (m.group("top") + "/" + m.group("bottom")));
    }
    String whole = m.group("whole");
    BigDecimal start = whole == null ? BigDecimal.ZERO : new BigDecimal(whole);
    return start.add(top.divide(bottom));
  }

  private static String advice(String text) {
    if (text.matches(".*\\d,\\d.*")) {
      return "write a decimal point, not a comma; " + EXPECTED;
    }
    if (text.matches(".*(ft|feet|foot|') ?[\\d /.-]+")) {
      return "the inches have no unit; write 12 ft 6 in or 12' 6\"";
    }
    return EXPECTED;
  }
}
