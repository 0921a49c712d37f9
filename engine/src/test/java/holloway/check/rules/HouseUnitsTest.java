package holloway.check.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.finding.Severity;
import holloway.house.RulePlace;
import org.junit.jupiter.api.Test;

/** Findings speak in the house's units. */
class HouseUnitsTest {
  @Test
  void metricFiguresGetFeetBeforeThem() {
    // 19.4 / 0.0254 = 763.8 in; 1.22 m = 48.03 in; 89 mm = 3.504 in; 111.2 N / 4.448 = 25 lbf
    assertEquals("63 ft 8 in (19.4 m) of it", HouseUnits.say("19.4 m of it"));
    assertEquals("4 ft (1.22 m)", HouseUnits.say("1.22 m"));
    assertEquals("3/4 in (19 mm) in 3-1/2 in (89 mm)", HouseUnits.say("19 mm in 89 mm"));
    assertEquals("pulls 25 lbf (111 N).", HouseUnits.say("pulls 111 N."));
  }

  @Test
  void whatHasBothIsLeftAlone() {
    for (String both :
        new String[] {
          "20 ft (6 m) of 14 AWG",
          "within 15 m (50 ft) of it",
          "3.0 dB/km and 9.38 ohm",
          "24 in (600 mm) apart",
          "class 4",
          "5 min"
        }) {
      assertEquals(both, HouseUnits.say(both));
    }
  }

  @Test
  void onlyInTheUs() {
    Finding f =
        new Finding("x", Severity.PRACTICE, Place.of("p"), "s", "It is 2.0 m. Go 1.0 m.", false)
            .with("2.0 m", "1.0 m", "Go 1.0 m.");
    assertSame(f, new HouseUnits(RulePlace.UK).of(f));
    Finding us = new HouseUnits(RulePlace.US).of(f);
    assertEquals("It is 6 ft 7 in (2.0 m). Go 3 ft 3 in (1.0 m).", us.text());
    assertEquals("Go 3 ft 3 in (1.0 m).", us.remedy());
    assertEquals("6 ft 7 in (2.0 m)", us.measured());
    assertEquals("3 ft 3 in (1.0 m)", us.limit());
  }
}
