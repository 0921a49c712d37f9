package holloway.check.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.finding.Severity;
import holloway.finding.Source;
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
   * A clause of one country's code is no source in another's house: whose the figure is is told,
   * the clause is not cited. Where no rules are known it is named as what it is.
   */
  @Test
  void aClauseIsCitedWhereItIsInForceAlone() {
    Source nec = Source.us("NEC 800.48");
    assertEquals("NEC 800.48", from(RulePlace.US, nec));
    String theirs = "no published source here; the figure is from US rules";
    assertEquals(theirs, from(RulePlace.UK, nec));
    assertEquals(theirs, from(RulePlace.EU, nec));
    assertEquals("no published source here; in the US: NEC 800.48", from(RulePlace.NONE, nec));
    assertEquals(
        "common practice, no published source; the figure is from US rules",
        from(RulePlace.UK, Source.PRACTICE.and(Source.us("the 15 m are NEC 800.48"))));
    Source bs = Source.uk("BS 5268-2");
    assertEquals("BS 5268-2", from(RulePlace.UK, bs));
    assertEquals("no published source here; the figure is from UK rules", from(RulePlace.US, bs));
    assertEquals("IEEE 802.3", from(RulePlace.UK, Source.anywhere("IEEE 802.3")));
    assertEquals(
        "local rules of NEC town: 3", from(RulePlace.UK, Source.own("local rules of NEC town: 3")));
  }

  private static String from(RulePlace place, Source source) {
    Finding f = new Finding("x", Severity.PRACTICE, Place.of("p"), source, "Hold it.", false);
    return in(place, f).source();
  }
}
