package holloway.housefile.draft;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holloway.units.Length;
import holloway.units.LengthParser;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TapeTextTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0|0 mm|0 in",
        "25400000|25.4 mm|1 in",
        "-396875|-0.396875 mm|-1/64 in",
        "3810000000|3.81 m|12 ft 6 in",
        "-312737500|-312.7375 mm|-1 ft 5/16 in",
        "304800000|304.8 mm|1 ft"
      })
  void asAPersonWouldWriteIt(long nm, String metric, String feet) {
    assertEquals(metric, new TapeText(true).of(new Length(nm)));
    assertEquals(feet, new TapeText(false).of(new Length(nm)));
  }

  @Property(seed = "3", tries = 500)
  void whatIsWrittenReadsBackExactly(
      @ForAll @LongRange(min = -400_000, max = 400_000) long tenths,
      @ForAll @LongRange(min = -400_000, max = 400_000) long sixtyFourths) {
    Length a = new Length(tenths * 100_000);
    Length b = new Length(sixtyFourths * 396_875);
    assertEquals(a, LengthParser.parse(new TapeText(true).of(a)).value());
    assertEquals(b, LengthParser.parse(new TapeText(false).of(b)).value());
  }
}
