package holloway.limits;

import static holloway.limits.Inches.in;
import static holloway.limits.Inches.less;
import static holloway.limits.Inches.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.finding.Severity;
import holloway.units.Length;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
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

  /** What no pack allows must be refused by US or UK, and the other way round. */
  @Property(seed = "7", tries = 500)
  void withoutAPackTheStricterOfTwo(
      @ForAll @IntRange(min = 60, max = 320) int depth,
      @ForAll @IntRange(min = 6, max = 80) int bit,
      @ForAll @IntRange(min = 0, max = 4000) int along) {
    Length d = mm(bit);
    Length edge = RulePack.centredEdge(mm(depth), d);
    boolean[] ok = new boolean[3];
    String[] places = {"us", "uk", "none"};
    for (int i = 0; i < 3; i++) {
      ok[i] =
          RulePack.of(places[i])
              .joistBore(mm(depth), d, edge, edge, mm(along), mm(4000), MemberMake.SOLID)
              .allowed();
    }
    assertEquals(ok[0] && ok[1], ok[2]);
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

  /** A refusal always says why and on whose word. */
  @Property(seed = "11", tries = 500)
  void everyRefusalIsExplained(
      @ForAll @IntRange(min = 30, max = 300) int width,
      @ForAll @IntRange(min = 1, max = 120) int bit,
      @ForAll boolean bearing,
      @ForAll boolean doubled) {
    Length edge = RulePack.centredEdge(mm(width), mm(bit));
    for (String place : new String[] {"us", "uk", "none"}) {
      RulePack pack = RulePack.of(place);
      for (Verdict v :
          new Verdict[] {
            pack.studBore(mm(width), mm(bit), edge, bearing, doubled),
            pack.plateBore(mm(width), mm(bit), bearing)
          }) {
        assertNotEquals("", v.source());
        assertTrue(v.allowed() || !v.text().isEmpty());
        assertTrue(v.allowed() || v.severity() != Severity.NOTE);
      }
    }
  }
}
