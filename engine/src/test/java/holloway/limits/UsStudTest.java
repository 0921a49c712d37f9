package holloway.limits;

import static holloway.limits.Inches.STUD_2X4;
import static holloway.limits.Inches.STUD_2X6;
import static holloway.limits.Inches.in;
import static holloway.limits.Inches.less;
import static holloway.limits.Inches.more;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.catalog.Fit;
import holloway.finding.Severity;
import holloway.units.Length;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** IRC R602.6 (studs), R602.6.1 (plates), NEC 300.4(A)(1) as practice (nail plates). */
class UsStudTest {
  private static final RulePack US = RulePack.of("us");

  private static Verdict stud(Length width, Length d, boolean bearing, boolean doubled) {
    return US.studBore(width, d, RulePack.centredEdge(width, d), bearing, doubled);
  }

  /** R602.6(2), exact decimals: 40 % is 1.40 and 2.20 in, 60 % is 2.10 and 3.30 in. */
  @ParameterizedTest
  @CsvSource({
    "3.5, true, false, 1.40",
    "5.5, true, false, 2.20",
    "3.5, true, true, 2.10",
    "5.5, true, true, 3.30",
    "3.5, false, false, 2.10",
    "5.5, false, false, 3.30"
  })
  void theShareOfTheWidth(double width, boolean bearing, boolean doubled, double most) {
    Verdict at = stud(in(width), in(most), bearing, doubled);
    Verdict over = stud(in(width), more(in(most)), bearing, doubled);
    assertTrue(at.allowed(), at.text());
    assertFalse(over.allowed());
    assertEquals(Severity.LAW, over.severity());
    assertEquals("IRC R602.6(2)", over.source());
  }

  @Test
  void roundedFractionTablesAreTooKind() {
    // A county sheet prints 2-1/8 and 3-5/16 in for 60 %: both are over the exact figure.
    assertFalse(stud(STUD_2X4, in(2.125), true, true).allowed());
    assertFalse(stud(STUD_2X6, in(3.3125), false, false).allowed());
  }

  @Test
  void aDoubledStudSaysHowManyInARow() {
    assertTrue(stud(STUD_2X4, in(1.5), true, true).text().contains("two"));
    assertEquals("", stud(STUD_2X4, in(1.4), true, true).text());
  }

  @Test
  void fiveEighthsToTheEdge() {
    assertTrue(US.studBore(STUD_2X4, in(1), in(0.625), false, false).allowed());
    assertFalse(US.studBore(STUD_2X4, in(1), less(in(0.625)), false, false).allowed());
  }

  /** R602.6.1: half of the width, 1.75 and 2.75 in; worded for pipes, so it is practice here. */
  @Test
  void aBearingPlateKeepsHalf() {
    assertTrue(US.plateBore(STUD_2X4, in(1.75), true).allowed());
    assertFalse(US.plateBore(STUD_2X4, more(in(1.75)), true).allowed());
    assertTrue(US.plateBore(STUD_2X6, in(2.75), true).allowed());
    Verdict over = US.plateBore(STUD_2X6, more(in(2.75)), true);
    assertFalse(over.allowed());
    assertEquals(Severity.PRACTICE, over.severity());
    assertTrue(over.source().contains("R602.6.1"));
  }

  @Test
  void aThreeQuarterInchCableHoleIsFarBelowHalf() {
    Verdict v = US.plateBore(STUD_2X4, in(0.75), true);
    assertTrue(v.allowed());
    assertEquals(Severity.NOTE, v.severity());
  }

  @Test
  void nailPlateBelowAnInchAndAQuarter() {
    assertFalse(US.needsNailPlate(STUD_2X4, in(1)));
    assertTrue(US.needsNailPlate(STUD_2X4, in(1).plus(new Length(2))));
    assertFalse(US.needsNailPlate(STUD_2X6, in(3)));
    assertTrue(US.needsNailPlate(STUD_2X6, in(3.01)));
    assertTrue(US.needsNailPlate(STUD_2X4, in(0.75), less(in(1.25))));
    assertTrue(US.needsNailPlate(STUD_2X4, in(0.75), in(1.6)), "the far side counts too");
    assertFalse(US.needsNailPlate(STUD_2X4, in(0.75), in(1.4)));
  }

  /** Without plates at most 1 in and 3 in; with them 40, 50 or 60 % of the width. */
  @ParameterizedTest
  @CsvSource({
    "3.5, true, false, 25, 25",
    "3.5, true, true, 32, 38",
    "3.5, false, true, 51, 51",
    "5.5, true, false, 51, 51",
    "5.5, false, true, 51, 51"
  })
  void theWidestBit(double width, boolean bearing, boolean nailPlate, int stud, int plate) {
    Length w = in(width);
    assertEquals(
        OptionalInt.of(stud), US.largestStudBore(w, bearing, false, nailPlate, Fit.BITS_MM));
    assertEquals(OptionalInt.of(plate), US.largestPlateBore(w, bearing, nailPlate, Fit.BITS_MM));
  }

  @Test
  void aDoubledBearingStudTakesThe51Bit() {
    assertEquals(OptionalInt.of(51), US.largestStudBore(STUD_2X4, true, true, true, Fit.BITS_MM));
  }
}
