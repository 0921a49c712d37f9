package holloway.limits;

import static holloway.limits.Inches.less;
import static holloway.limits.Inches.mm;
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

/** BS 5268-2 as BM TRADA and LABC print it: a quarter, 65 mm, centreline, 0.25 to 0.4 of span. */
class UkPackTest {
  private static final RulePack UK = RulePack.of("uk");
  private static final Length SPAN = mm(4000);

  private static Verdict joist(Length depth, Length d, Length along) {
    Length edge = RulePack.centredEdge(depth, d);
    return UK.joistBore(depth, d, edge, edge, along, SPAN, MemberMake.SOLID);
  }

  /** LABC's table, exact quarters: 25, 31.25, 37.5, 43.75, 50, 56.25, 62.5 mm; then 65. */
  @ParameterizedTest
  @CsvSource({
    "100, 25",
    "125, 31.25",
    "150, 37.5",
    "175, 43.75",
    "200, 50",
    "225, 56.25",
    "250, 62.5",
    "260, 65",
    "275, 65",
    "300, 65"
  })
  void aQuarterAtMost65(double depth, double most) {
    assertTrue(joist(mm(depth), mm(most), mm(1200)).allowed());
    Verdict over = joist(mm(depth), more(mm(most)), mm(1200));
    assertFalse(over.allowed());
    assertEquals(Severity.STANDARD, over.severity());
  }

  /** 0.25 to 0.4 of 4 m from either support: 1.0 to 1.6 m and 2.4 to 3.0 m. */
  @Test
  void onlyInTheZone() {
    for (double along : new double[] {1000, 1600, 2400, 3000}) {
      assertTrue(joist(mm(200), mm(25), mm(along)).allowed(), along + " mm");
    }
    assertFalse(joist(mm(200), mm(25), less(mm(1000))).allowed());
    assertFalse(joist(mm(200), mm(25), more(mm(1600))).allowed());
    assertFalse(joist(mm(200), mm(25), mm(2000)).allowed(), "mid-span");
    assertFalse(joist(mm(200), mm(25), less(mm(2400))).allowed());
    assertFalse(joist(mm(200), mm(25), more(mm(3000))).allowed());
  }

  @Test
  void onTheCentreline() {
    Length d = mm(25);
    assertTrue(
        UK.joistBore(mm(200), d, mm(88.5), mm(86.5), mm(1200), SPAN, MemberMake.SOLID).allowed());
    assertFalse(
        UK.joistBore(mm(200), d, mm(89), mm(86), mm(1200), SPAN, MemberMake.SOLID).allowed());
  }

  @Test
  void raftersAndBeamsNeedADesigner() {
    assertEquals(OptionalInt.empty(), UK.largestJoistBore(mm(250), MemberMake.RAFTER, Fit.BITS_MM));
    assertEquals(OptionalInt.empty(), UK.largestJoistBore(mm(250), MemberMake.BEAM, Fit.BITS_MM));
  }

  @Test
  void threeDiametersApart() {
    assertTrue(UK.joistSpacing(mm(75), mm(25), mm(16)).allowed());
    assertFalse(UK.joistSpacing(less(mm(75)), mm(16), mm(25)).allowed());
    assertTrue(UK.plateSpacing(mm(75), mm(25), mm(25)).allowed());
    assertEquals(Severity.PRACTICE, UK.plateSpacing(less(mm(75)), mm(25), mm(25)).severity());
  }

  @Test
  void theWidestBit() {
    assertEquals(OptionalInt.of(25), UK.largestJoistBore(mm(100), MemberMake.SOLID, Fit.BITS_MM));
    assertEquals(OptionalInt.of(38), UK.largestJoistBore(mm(170), MemberMake.SOLID, Fit.BITS_MM));
    assertEquals(OptionalInt.of(51), UK.largestJoistBore(mm(220), MemberMake.SOLID, Fit.BITS_MM));
    // studs and plates: our own defaults, so this only pins what the program does
    assertEquals(OptionalInt.of(22), UK.largestPlateBore(mm(89), true, true, Fit.BITS_MM));
    assertEquals(OptionalInt.of(25), UK.largestStudBore(mm(63), false, false, true, Fit.BITS_MM));
  }

  /** A third of a 100 mm leaf upright, a sixth level: from memory, so only a default is pinned. */
  @Test
  void channelsInMasonry() {
    assertTrue(UK.channel(mm(102), mm(34), true).allowed());
    assertFalse(UK.channel(mm(102), more(mm(34)), true).allowed());
    assertTrue(UK.channel(mm(102), mm(17), false).allowed());
    Verdict over = UK.channel(mm(102), more(mm(17)), false);
    assertFalse(over.allowed());
    assertTrue(over.source().contains("from memory"));
  }
}
