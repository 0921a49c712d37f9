package holloway.units;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The house's unit comes first, and a figure is never changed. */
class BothUnitsTest {
  @ParameterizedTest
  @CsvSource({
    "32 mm (1-1/4 in), 1-1/4 in (32 mm)",
    "559 x 762 mm (22 x 30 in), 22 x 30 in (559 x 762 mm)",
    "0 C (32 F) or above, 32 F (0 C) or above",
    "CMX under 6 mm (0.25 in)., CMX under 0.25 in (6 mm).",
    "at most 15 m (50 ft) of it, at most 50 ft (15 m) of it",
    "than 0.56 m2 (6 sq ft) a room, than 6 sq ft (0.56 m2) a room",
    "a 1.6 mm (1/16 in) plate, a 1/16 in (1.6 mm) plate",
  })
  void bothWays(String metric, String feet) {
    assertEquals(feet, BothUnits.feetFirst(metric));
    assertEquals(metric, BothUnits.metricFirst(feet));
    assertEquals(feet, BothUnits.feetFirst(feet));
    assertEquals(metric, BothUnits.metricFirst(metric));
  }

  @ParameterizedTest
  @CsvSource({
    "NEC 300.4(A)(1)",
    "class 4",
    "5 min",
    "3.0 dB/km",
    "100 mm",
    "2 in",
    "24 in each (of 3)"
  })
  void anythingElseStays(String text) {
    assertEquals(text, BothUnits.feetFirst(text));
    assertEquals(text, BothUnits.metricFirst(text));
  }
}
