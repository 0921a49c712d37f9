package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Source;
import holloway.house.RulePlace;
import holloway.limits.Capstan;
import holloway.units.BothUnits;
import holloway.units.Length;
import holloway.units.LengthText;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * Says what a rule measured in the units of the house: in the US feet, inches and pounds first, the
 * metric figure after them. Of what a text gives in both units the house's own come first.
 */
final class HouseUnits {
  /** A figure that stands in no brackets and has none behind it. */
  private static final Pattern METRIC =
      Pattern.compile("(?<![\\w.(/-])(\\d+(?:\\.\\d+)?) (mm|m|N)\\b(?! \\()(?!\\))(?!/)");

  private final RulePlace place;
  private final RulePlace rules;

  /**
   * @param rules whose rules are in force, which may be another place's
   */
  HouseUnits(RulePlace place, RulePlace rules) {
    this.place = place;
    this.rules = rules;
  }

  Finding of(Finding f) {
    Source source = f.from().in(whose(rules));
    Finding said =
        new Finding(f.rule(), f.severity(), f.place(), source, words(f.text()), f.broken());
    return said.with(words(f.measured()), words(f.limit()), words(f.remedy()));
  }

  /** Europe in metres has no rules of its own, but its houses stand in no US code either. */
  private static Optional<Source.Of> whose(RulePlace rules) {
    return switch (rules) {
      case US -> Optional.of(Source.Of.US);
      case UK -> Optional.of(Source.Of.UK);
      case EU -> Optional.of(Source.Of.ANYWHERE);
      case NONE -> Optional.empty();
    };
  }

  private String words(String text) {
    return place == RulePlace.US ? BothUnits.feetFirst(say(text)) : BothUnits.metricFirst(text);
  }

  static String say(String text) {
    return METRIC.matcher(text).replaceAll(HouseUnits::both);
  }

  private static String both(MatchResult m) {
    BigDecimal n = new BigDecimal(m.group(1));
    String own =
        switch (m.group(2)) {
          case "mm" ->
              n.scale() > 0 && n.intValue() < 10
                  ? thin(n)
                  : LengthText.feetInches(new Length(n.movePointRight(6).longValue()));
          case "m" -> LengthText.feetInches(Length.inches(inches(n)));
          default -> Math.round(n.doubleValue() / Capstan.POUND) + " lbf";
        };
    return own + " (" + m.group() + ")";
  }

  /** Thin things to a hundredth of an inch: a sixteenth would hide what counts. */
  private static String thin(BigDecimal mm) {
    return mm.divide(new BigDecimal("25.4"), 2, RoundingMode.HALF_UP) + " in";
  }

  /** To the nearest inch, as cable is measured. */
  private static long inches(BigDecimal metres) {
    return metres.divide(new BigDecimal("0.0254"), 0, RoundingMode.HALF_UP).longValueExact();
  }
}
