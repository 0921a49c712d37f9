package holloway.limits;

import static holloway.limits.Inches.JOIST_2X10;
import static holloway.limits.Inches.JOIST_2X12;
import static holloway.limits.Inches.JOIST_2X8;
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
import org.junit.jupiter.params.provider.EnumSource;

/** IRC R502.8.1 and R802.7.1 (a third of the depth, 2 in to the edges), R502.8.2. */
class UsJoistTest {
  private static final RulePack US = RulePack.of("us");
  private static final Length SPAN = Length.feet(14);

  private static Verdict centred(Length depth, Length diameter, MemberMake make) {
    Length edge = RulePack.centredEdge(depth, diameter);
    return US.joistBore(depth, diameter, edge, edge, in(40), SPAN, make);
  }

  private static boolean ok(Length depth, Length diameter) {
    return centred(depth, diameter, MemberMake.SOLID).allowed();
  }

  @Test
  void aThirdOfTheDepthBindsFrom2x8Up() {
    // R502.8.1: d/3 of 9-1/4 in is 3.0833... in, of 11-1/4 in exactly 3.75 in.
    assertTrue(ok(JOIST_2X12, in(3.75)));
    assertFalse(ok(JOIST_2X12, more(in(3.75))));
    long third = JOIST_2X10.nm() / 3;
    assertTrue(ok(JOIST_2X10, new Length(third)));
    assertFalse(ok(JOIST_2X10, new Length(third + 1)));
    assertTrue(ok(JOIST_2X8, in(2.41)));
    assertFalse(ok(JOIST_2X8, in(2.42)));
  }

  @Test
  void twoInchesToTheEdgesBindIn2x6() {
    // d/3 would let 1.83 in through; both rules together leave 5.5 - 4 = 1.50 in.
    assertTrue(ok(STUD_2X6, in(1.5)));
    assertFalse(ok(STUD_2X6, in(1.5).plus(new Length(2))));
    assertFalse(ok(STUD_2X6, in(1.8125)));
  }

  @Test
  void theEdgeCountsOnEachSide() {
    Length d = in(1);
    assertTrue(
        US.joistBore(JOIST_2X10, d, in(2), in(6.25), in(3), SPAN, MemberMake.SOLID).allowed());
    Verdict high =
        US.joistBore(JOIST_2X10, d, less(in(2)), in(6.25), in(3), SPAN, MemberMake.SOLID);
    Verdict low = US.joistBore(JOIST_2X10, d, in(6.25), less(in(2)), in(3), SPAN, MemberMake.SOLID);
    assertFalse(high.allowed());
    assertFalse(low.allowed());
    assertEquals(Severity.LAW, low.severity());
    assertTrue(low.source().contains("R502.8.1"));
  }

  @Test
  void a2x4JoistTakesNoHoleAtAll() {
    for (int bit : Fit.BITS_MM) {
      assertFalse(ok(STUD_2X4, Length.mm((long) bit)), bit + " mm");
    }
    assertEquals(OptionalInt.empty(), US.largestJoistBore(STUD_2X4, MemberMake.SOLID, Fit.BITS_MM));
  }

  @Test
  void anywhereAlongTheSpan() {
    // C1-3: the middle third is not barred for holes (it is for notches).
    for (double along : new double[] {1, 42, 84, 167}) {
      assertTrue(
          US.joistBore(JOIST_2X10, in(1), in(4.125), in(4.125), in(along), SPAN, MemberMake.SOLID)
              .allowed());
    }
  }

  @ParameterizedTest
  @CsvSource({"5.5, 38", "7.25, 51", "9.25, 51", "11.25, 51"})
  void theWidestBit(double depth, int bit) {
    // min(d/3, d - 4 in): 38.1, 61.4, 78.3, 95.3 mm; the ladder ends at 51 mm.
    assertEquals(
        OptionalInt.of(bit), US.largestJoistBore(in(depth), MemberMake.SOLID, Fit.BITS_MM));
    assertEquals(
        OptionalInt.of(bit), US.largestJoistBore(in(depth), MemberMake.RAFTER, Fit.BITS_MM));
  }

  @ParameterizedTest
  @EnumSource(
      value = MemberMake.class,
      names = {"TRUSS", "OPEN_WEB", "LVL", "GLULAM", "STEEL", "BEAM"})
  void neverThroughEngineeredMembers(MemberMake make) {
    for (String place : new String[] {"us", "uk", "none"}) {
      assertEquals(
          OptionalInt.empty(), RulePack.of(place).largestJoistBore(in(14), make, Fit.BITS_MM));
    }
  }

  @Test
  void anIJoistTakesAKnockoutClearOfItsFlanges() {
    Length depth = in(9.5);
    assertTrue(centred(depth, in(1.5), MemberMake.I_JOIST).allowed());
    assertFalse(centred(depth, more(in(1.5)), MemberMake.I_JOIST).allowed());
    // flange 1-1/2 in (usual make, from memory) and 1/8 in of web
    Length clear = in(1.625);
    Length rest = depth.minus(in(1)).minus(clear);
    assertTrue(US.joistBore(depth, in(1), clear, rest, in(3), SPAN, MemberMake.I_JOIST).allowed());
    assertFalse(
        US.joistBore(depth, in(1), less(clear), rest, in(3), SPAN, MemberMake.I_JOIST).allowed());
    assertFalse(
        US.joistBore(depth, in(1), rest, less(clear), in(3), SPAN, MemberMake.I_JOIST).allowed());
  }

  @Test
  void twoInchesOfWoodBetweenHoles() {
    Length d = in(1);
    assertTrue(US.joistSpacing(in(3), d, d).allowed());
    assertFalse(US.joistSpacing(less(in(3)), d, d).allowed());
    assertTrue(US.joistSpacing(in(3.25), d, in(1.5)).allowed());
    assertFalse(US.joistSpacing(less(in(3.25)), in(1.5), d).allowed());
  }
}
