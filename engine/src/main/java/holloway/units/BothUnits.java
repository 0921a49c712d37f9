package holloway.units;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Puts the house's own unit first where a text gives a figure in both: a person reads the first and
 * skips the one in brackets. Figures in one unit only stay as they are.
 */
public final class BothUnits {
  private static final String NUMBER = "\\d[\\d./x -]*?";
  private static final List<String> METRIC = List.of("mm", "m2", "m", "C");
  private static final List<String> FEET = List.of("in", "sq ft", "ft", "F");

  private BothUnits() {}

  /** Feet, inches and degrees F before their metric figures: {@code 2 in (51 mm)}. */
  public static String feetFirst(String text) {
    return swap(text, METRIC, FEET);
  }

  /** Metric before feet, inches and degrees F: {@code 51 mm (2 in)}. */
  public static String metricFirst(String text) {
    return swap(text, FEET, METRIC);
  }

  private static String swap(String text, List<String> now, List<String> wanted) {
    Pattern both =
        Pattern.compile(
            "(?<![\\w./(-])(%s (?:%s)) \\((%s (?:%s))\\)"
                .formatted(NUMBER, String.join("|", now), NUMBER, String.join("|", wanted)));
    Matcher m = both.matcher(text);
    return m.replaceAll("$2 ($1)");
  }
}
