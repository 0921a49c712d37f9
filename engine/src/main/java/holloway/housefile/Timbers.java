package holloway.housefile;

import holloway.house.Timber;
import holloway.units.Length;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Sections as people name them. US sizes as dressed today: trade-facts D1 to D5. From 1930 to 1969
 * a 2x4 was about 3-5/8 in deep (D15); the other sizes of that time, and that timber before 1930
 * was about as thick as its name, are from memory.
 */
final class Timbers {
  private static final Pattern NAMED = Pattern.compile("2x(4|6|8|10|12)");
  private static final Pattern METRIC = Pattern.compile("(\\d{2,3}) ?x ?(\\d{2,3})(?: mm)?");

  private static final Pattern STEEL =
      Pattern.compile("steel (?:(\\d-)?(\\d)/(\\d) in|(\\d{2,3}) mm)");

  /** Depths in eighths of an inch. */
  private static final Map<String, Integer> DRESSED =
      Map.of("4", 28, "6", 44, "8", 58, "10", 74, "12", 90);

  private static final Map<String, Integer> OLDER =
      Map.of("4", 29, "6", 45, "8", 60, "10", 76, "12", 92);

  private Timbers() {}

  /** Studs may be of steel: by their depth; a flange is 1-1/4 in wide (usual make, from memory). */
  static Timber parse(String text, int built) {
    Matcher steel = STEEL.matcher(text);
    if (steel.matches()) {
      Length depth =
          steel.group(4) != null
              ? Length.mm(Long.parseLong(steel.group(4)))
              : inches(steel.group(1), steel.group(2), steel.group(3));
      return new Timber(text, Length.inches(5, 4), depth, Timber.Kind.STEEL);
    }
    if (text.startsWith("steel")) {
      throw new Refused("this is no depth of steel studs", Form.STUDS.expected());
    }
    return wood(text, built);
  }

  private static Length inches(String whole, String n, String d) {
    int per = Integer.parseInt(d);
    if (Integer.bitCount(per) != 1) {
      throw new Refused("inches go by halves, quarters and eighths", Form.STUDS.expected());
    }
    long units = whole == null ? 0 : Long.parseLong(whole.substring(0, whole.length() - 1));
    return Length.inches(units * per + Long.parseLong(n), per);
  }

  static Timber wood(String text, int built) {
    Matcher named = NAMED.matcher(text);
    if (named.matches()) {
      return named(text, named.group(1), built);
    }
    Matcher metric = METRIC.matcher(text);
    if (!metric.matches()) {
      throw new Refused(
          "this is not a timber size",
          Form.TIMBER.expected(),
          Nearest.of(text, java.util.List.of("2x4", "2x6", "2x8", "2x10", "2x12")));
    }
    long a = Long.parseLong(metric.group(1));
    long b = Long.parseLong(metric.group(2));
    if (Math.min(a, b) < 15 || Math.max(a, b) < 35) {
      throw new Refused(
          "a timber is in inches by name (2x4) or in whole millimetres", Form.TIMBER.expected());
    }
    String name = Math.min(a, b) + "x" + Math.max(a, b);
    return Timber.solid(name, Length.mm(Math.min(a, b)), Length.mm(Math.max(a, b)));
  }

  private static Timber named(String name, String depth, int built) {
    if (built < 1930) {
      return Timber.solid(name, Length.inches(2), Length.inches(Long.parseLong(depth)));
    }
    return built < 1970
        ? Timber.solid(name, Length.inches(13, 8), Length.inches(OLDER.get(depth), 8))
        : Timber.solid(name, Length.inches(12, 8), Length.inches(DRESSED.get(depth), 8));
  }
}
