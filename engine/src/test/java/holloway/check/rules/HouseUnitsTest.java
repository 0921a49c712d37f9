package holloway.check.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.finding.Severity;
import holloway.house.RulePlace;
import holloway.limits.WiringFigures;
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
  void feetOnlyInTheUs() {
    Finding f =
        new Finding("x", Severity.PRACTICE, Place.of("p"), "s", "It is 2.0 m. Go 1.0 m.", false)
            .with("2.0 m", "1.0 m", "Go 1.0 m.");
    assertEquals(f, in(RulePlace.UK, f));
    Finding us = in(RulePlace.US, f);
    assertEquals("It is 6 ft 7 in (2.0 m). Go 3 ft 3 in (1.0 m).", us.text());
    assertEquals("Go 3 ft 3 in (1.0 m).", us.remedy());
    assertEquals("6 ft 7 in (2.0 m)", us.measured());
    assertEquals("3 ft 3 in (1.0 m)", us.limit());
  }

  @Test
  void theHousesOwnUnitComesFirst() {
    Finding f =
        new Finding("x", Severity.LAW, Place.of("p"), "s", "Hold it. Keep 51 mm (2 in).", false)
            .with("6 ft (1.8 m)", "15.9 mm (5/8 in) Type X", "Keep 51 mm (2 in).");
    assertEquals("Hold it. Keep 2 in (51 mm).", in(RulePlace.US, f).text());
    assertEquals("5/8 in (15.9 mm) Type X", in(RulePlace.US, f).limit());
    assertEquals("1.8 m (6 ft)", in(RulePlace.UK, f).measured());
    assertEquals("Keep 51 mm (2 in).", in(RulePlace.UK, f).remedy());
  }

  private static Finding in(RulePlace place, Finding f) {
    return new HouseUnits(place, place).of(f);
  }

  /**
   * A clause of a US code is no source of a house elsewhere, and a person reads that it is none.
   */
  @Test
  void aUsClauseElsewhereSaysSo() {
    int named = 0;
    for (PlanRule r : PlanRules.all()) {
      String us = r.entry().source();
      assertEquals(us, HouseSource.here(RulePlace.US, us));
      for (RulePlace place : new RulePlace[] {RulePlace.UK, RulePlace.EU, RulePlace.NONE}) {
        String here = HouseSource.here(place, us);
        boolean code = us.matches(".*\\b(NEC|IRC|CFR)\\b.*");
        named += code ? 1 : 0;
        assertTrue(!code || here.contains("no published source"), here);
        assertTrue(!code || here.contains("US"), here);
      }
    }
    assertTrue(named > 30, "of " + named);
    assertEquals(
        "local rules of NEC town: 3", HouseSource.here(RulePlace.UK, "local rules of NEC town: 3"));
    assertEquals(
        WiringFigures.UK_FROM_POWER.cited(), HouseSource.power(RulePlace.UK, "NEC 800.133"));
  }
}
