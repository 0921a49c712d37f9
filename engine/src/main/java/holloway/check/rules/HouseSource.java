package holloway.check.rules;

import holloway.house.RulePlace;
import holloway.limits.WiringFigures;
import java.util.regex.Pattern;

/**
 * Whose rule a source is, for a house elsewhere: a clause of a US code is no source in the UK, and
 * a figure taken from it there says so.
 */
final class HouseSource {
  private static final Pattern US_CODE = Pattern.compile("\\b(NEC|IRC|OSHA|CFR)\\b");

  private HouseSource() {}

  static String here(RulePlace place, String source) {
    boolean foreign =
        place != RulePlace.US
            && US_CODE.matcher(source).find()
            && !source.startsWith("local rules of")
            && !source.contains("(US");
    if (!foreign) {
      return source;
    }
    return source.contains("no published source")
        ? source + " (US)"
        : "no published source here; in the US: " + source;
  }

  /** Distance from power and boxes shared with it: the UK has a standard of its own. */
  static String power(RulePlace place, String us) {
    return place == RulePlace.UK ? WiringFigures.UK_FROM_POWER.cited() : us;
  }
}
