package holloway.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Expected nanometres are arithmetic: 25 400 000 to the inch. */
class LengthParserTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "12 ft 6 in|3810000000",
        "12' 6 1/2\"|3822700000",
        "12'6-1/2\"|3822700000",
        "6-1/2 in|165100000",
        "1/64 in|396875",
        "63/64 in|25003125",
        "3.81 m|3810000000",
        "381 cm|3810000000",
        "3810 mm|3810000000",
        "0.1 mm|100000",
        "2 ft|609600000",
        "2.5 ft|762000000",
        "1 ft 0.125 in|307975000",
        "7 feet 1 inch|2159000000",
        "16in|406400000",
        "-4 in|-101600000",
        "0 ft|0",
        "  12   ft  6 in |3810000000",
        "12\u2032 6\u2033|3810000000"
      })
  void reads(String text, long nm) {
    assertEquals(nm, LengthParser.parse(text).value().nm());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "-",
        "12",
        "0",
        "12 ft 6",
        "12 6 in",
        "3.81",
        "3 m 81 cm",
        "a ft",
        "1e3 mm",
        "12 yd",
        "12 ft 6 in 3 in",
        "6 in 12 ft",
        "+4 in",
        "1.2.3 m",
        "ft",
        "12 ft x"
      })
  void refusesWithAWordAboutUnits(String text) {
    String message = refusal(text);
    assertTrue(message.contains("unit"), message);
  }

  @Test
  void aBareNumberIsToldWhatALengthLooksLike() {
    assertEquals(
        "a length needs a unit: 12 ft 6 in, 12' 6 1/2\", 3.81 m, 3810 mm", refusal("12.5"));
  }

  @Test
  void refusesFractionsThatNoTapeHas() {
    for (String bad :
        new String[] {"1/3 in", "5/4 in", "1/0 in", "1/128 in", "6 8/8 in", "0/0 in"}) {
      assertTrue(refusal(bad).contains("a fraction of an inch"), bad);
    }
  }

  @Test
  void refusesTwelveInchesAfterFeet() {
    assertTrue(refusal("3 ft 14 in").contains("less than 12"));
    assertEquals(355_600_000, LengthParser.parse("14 in").value().nm());
  }

  @Test
  void refusesACommaAndMoreThanAKilometre() {
    assertTrue(refusal("3,81 m").contains("decimal point"));
    assertTrue(refusal("1001 m").contains("1000 m"));
    assertTrue(refusal("99999999999999999999999 ft").contains("1000 m"));
  }

  @Test
  void readsASpread() {
    LengthParser.Taped taped = LengthParser.parse("3.81 m +- 10 mm");
    assertEquals(Length.mm(3810), taped.value());
    assertEquals(Optional.of(Length.mm(10)), taped.spread());
    assertEquals(
        Optional.of(Length.inches(1, 2)), LengthParser.parse("12 ft \u00b1 1/2 in").spread());
    assertEquals(Optional.empty(), LengthParser.parse("12 ft").spread());
    assertTrue(refusal("12 ft +- -1 in").contains("negative"));
    assertTrue(refusal("12 ft +-").contains("unit"));
  }

  @Property
  void everySixtyFourthComesBackExact(@ForAll @IntRange(min = 0, max = 400_000) int sixtyFourths) {
    int feet = sixtyFourths / 768;
    int inches = sixtyFourths % 768 / 64;
    int rest = sixtyFourths % 64;
    String text = "%d ft %d %d/64 in".formatted(feet, inches, rest);
    assertEquals(sixtyFourths * 396_875L, LengthParser.parse(text).value().nm(), text);
  }

  @Property
  void whatIsPrintedReadsBackWithinHalfASixteenth(
      @ForAll @IntRange(min = -100_000, max = 100_000) int mm) {
    Length length = Length.mm(mm);
    Length back = LengthParser.parse(LengthText.feetInches(length)).value();
    assertTrue(Math.abs(back.nm() - length.nm()) <= Length.inches(1, 32).nm() + 1);
    Length metric = LengthParser.parse(LengthText.metric(length)).value();
    assertEquals(length, metric);
  }

  @Property
  void anyTextIsReadOrRefused(@ForAll String text) {
    try {
      LengthParser.parse(text);
    } catch (IllegalArgumentException expected) {
      assertTrue(!expected.getMessage().isEmpty());
    }
  }

  @Property
  void thePatternTakesWhatTheParserTakes(
      @ForAll @IntRange(min = 0, max = 99) int feet,
      @ForAll @IntRange(min = 0, max = 11) int inch) {
    for (String text :
        new String[] {
          feet + " ft " + inch + " in", feet + "' " + inch + " 1/2\"", feet + "." + inch + " m"
        }) {
      assertTrue(text.matches(LengthParser.PATTERN), text);
      LengthParser.parse(text);
    }
  }

  private static String refusal(String text) {
    return assertThrows(IllegalArgumentException.class, () -> LengthParser.parse(text))
        .getMessage();
  }
}
