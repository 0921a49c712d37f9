package holloway.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.limits.Capstan;
import holloway.units.UnitSystem;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

/** What is printed to cut at is never shorter than what was counted. */
class CutWordsTest {
  private static final UnitWords FEET = new UnitWords(UnitSystem.FT_IN);
  private static final UnitWords METRES = new UnitWords(UnitSystem.METRIC);

  @Test
  void upToTheNextInchAndTenth() {
    // 21.6 m = 850.39 in: 850 in (70 ft 10 in) would be 10 mm short.
    assertEquals("70 ft 11 in", FEET.cut(21.6));
    assertEquals("10 ft", FEET.cut(3.048));
    assertEquals("10 ft 1 in", FEET.cut(3.0481));
    assertEquals("3.1 m", METRES.cut(3.0481));
    assertEquals("3.1 m", METRES.cut(3.1));
    assertEquals("11 ft", FEET.quantity(3.05, "m"));
    assertEquals("10 ft", FEET.quantity(3.048, "m"));
  }

  /** 25 lbf are 111.2 N: a pull is never told smaller, what the cable bears never larger. */
  @Test
  void aPullUpAndALimitDown() {
    assertEquals("112 N", METRES.force(111.2));
    assertEquals("111 N", METRES.mostForce(111.2));
    assertEquals("25 lbf", FEET.force(25 * Capstan.POUND));
    assertEquals("25 lbf", FEET.mostForce(25 * Capstan.POUND));
    assertEquals("24 lbf", FEET.mostForce(24.9 * Capstan.POUND));
  }

  @Property(tries = 2000, seed = "6")
  void neverShownShort(@ForAll @LongRange(min = 1, max = 400_000) long mm) {
    double m = mm / 1000.0;
    String feet = FEET.cut(m);
    long inches = 0;
    String[] words = feet.split(" ");
    for (int i = 0; i < words.length; i += 2) {
      inches += Long.parseLong(words[i]) * (words[i + 1].equals("ft") ? 12 : 1);
    }
    // An inch is 25.4 mm: in tenths of millimetres everything is whole.
    assertTrue(inches * 254 >= mm * 10, feet + " for " + mm + " mm");
    assertTrue((inches - 1) * 254 < mm * 10, feet + " is more than an inch over");
    String metres = METRES.cut(m);
    assertTrue(Math.round(Double.parseDouble(metres.split(" ")[0]) * 1000) >= mm, metres);
  }
}
