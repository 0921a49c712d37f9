package holloway.limits;

import static holloway.limits.Inches.in;
import static holloway.limits.Inches.less;
import static holloway.limits.Inches.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.finding.Severity;
import holloway.units.Length;
import org.junit.jupiter.api.Test;

/** What the packs share, and what law, standard and practice each say of air and power. */
class PlacesTest {
  private static final Length WANTED = WiringFigures.BESIDE_POWER.length();

  @Test
  void packsByName() {
    for (String place : new String[] {"us", "uk", "none"}) {
      assertEquals(place, RulePack.of(place).name());
    }
    assertThrows(IllegalArgumentException.class, () -> RulePack.of("mars"));
  }

  @Test
  void withoutAPackNothingIsLaw() {
    RulePack none = RulePack.of("none");
    Verdict joist =
        none.joistBore(in(9.25), in(4), in(2.6), in(2.6), in(40), in(160), MemberMake.SOLID);
    assertFalse(joist.allowed());
    assertEquals(Severity.PRACTICE, joist.severity());
    assertEquals(Severity.PRACTICE, none.returnAir(false, false).severity());
    assertEquals(
        Severity.PRACTICE, none.fromPower(mm(10), PowerWiring.OPEN_CONDUCTORS, WANTED).severity());
  }

  /** NEC 300.22(C) exception: across the bay is free, along it is not. */
  @Test
  void returnAirAcrossOrWithPlenumCable() {
    RulePack us = RulePack.of("us");
    assertTrue(us.returnAir(true, false).allowed());
    assertTrue(us.returnAir(false, true).allowed());
    Verdict along = us.returnAir(false, false);
    assertFalse(along.allowed());
    assertEquals(Severity.LAW, along.severity());
    assertTrue(along.source().contains("300.22(C)"));
  }

  /** NEC 800.133: 2 in from open conductors is law, beside sheathed cable it is practice only. */
  @Test
  void twoInchesFromOpenConductors() {
    RulePack us = RulePack.of("us");
    assertTrue(us.fromPower(in(2), PowerWiring.OPEN_CONDUCTORS, WANTED).allowed());
    Verdict open = us.fromPower(less(in(2)), PowerWiring.OPEN_CONDUCTORS, Length.ZERO);
    assertEquals(Severity.LAW, open.severity());
    assertTrue(us.fromPower(Length.ZERO, PowerWiring.SHEATHED, Length.ZERO).allowed());
    Verdict near = us.fromPower(mm(49), PowerWiring.SHEATHED, WANTED);
    assertFalse(near.allowed());
    assertEquals(Severity.PRACTICE, near.severity());
    assertTrue(us.fromPower(mm(50), PowerWiring.SHEATHED, WANTED).allowed());
  }
}
