package holloway.limits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.finding.Severity;
import holloway.units.Length;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * A figure of a rule file takes the place of the pack's, at the limit and one nanometre past it.
 */
class LocalRulesTest {
  private static final Length NM = new Length(1);

  private static RulePack pack(String base, RuleKey key, double value, String unit) {
    Figure f = LocalRules.figure("Brookfield", key, value, unit, "by-law 4.2");
    var stated = new LocalRules.Stated(f, Optional.of(Severity.STANDARD));
    return RulePack.of(base, new LocalRules("Brookfield", "b.yaml", base, Map.of(key, stated)));
  }

  private static void judged(Verdict at, Verdict past) {
    assertTrue(at.allowed(), at.toString());
    assertFalse(past.allowed(), past.toString());
    assertEquals(Severity.STANDARD, past.severity());
    assertEquals("local rules of Brookfield: by-law 4.2", past.source());
    assertTrue(past.own());
  }

  private static Verdict joist(RulePack p, Length bit, Length edge) {
    return p.joistBore(
        Length.mm(200), bit, edge, edge, Length.mm(1000), Length.mm(3000), MemberMake.SOLID);
  }

  @Test
  void aJoistsShareInEveryPack() {
    for (String base : new String[] {"us", "uk", "none"}) {
      RulePack p = pack(base, RuleKey.JOIST_HOLE, 0.2, "fraction");
      judged(
          joist(p, Length.mm(40), Length.mm(80)), joist(p, Length.mm(40).plus(NM), Length.mm(80)));
    }
  }

  @Test
  void edgesAndWhatLiesBetweenTwoHoles() {
    RulePack p = pack("us", RuleKey.JOIST_EDGE, 60, "mm");
    judged(
        joist(p, Length.mm(20), Length.mm(60)), joist(p, Length.mm(20), Length.mm(60).minus(NM)));
    judged(
        p.joistSpacing(Length.mm(80), Length.mm(20), Length.mm(20)),
        p.joistSpacing(Length.mm(80).minus(NM), Length.mm(20), Length.mm(20)));
    RulePack stud = pack("us", RuleKey.STUD_EDGE, 25, "mm");
    judged(
        stud.studBore(Length.mm(100), Length.mm(20), Length.mm(25), true, false),
        stud.studBore(Length.mm(100), Length.mm(20), Length.mm(25).minus(NM), true, false));
  }

  @Test
  void studsAndPlates() {
    for (String base : new String[] {"us", "uk", "none"}) {
      RulePack bearing = pack(base, RuleKey.BEARING_STUD_HOLE, 0.2, "fraction");
      Length edge = Length.mm(39);
      judged(
          bearing.studBore(Length.mm(100), Length.mm(20), edge, true, false),
          bearing.studBore(Length.mm(100), Length.mm(20).plus(NM), edge, true, false));
      RulePack plate = pack(base, RuleKey.PARTITION_PLATE_HOLE, 0.3, "fraction");
      judged(
          plate.plateBore(Length.mm(100), Length.mm(30), false),
          plate.plateBore(Length.mm(100), Length.mm(30).plus(NM), false));
    }
  }

  @Test
  void placeAlongTheSpanAndSpacing() {
    RulePack p = pack("uk", RuleKey.JOIST_HOLE_TO, 0.3, "fraction");
    Length bit = Length.mm(20);
    judged(along(p, bit, Length.mm(900)), along(p, bit, Length.mm(900).plus(NM)));
    RulePack from = pack("uk", RuleKey.JOIST_HOLE_FROM, 0.3, "fraction");
    judged(along(from, bit, Length.mm(900)), along(from, bit, Length.mm(900).minus(NM)));
    RulePack apart = pack("uk", RuleKey.JOIST_HOLES_APART, 4, "count");
    judged(
        apart.joistSpacing(Length.mm(80), bit, bit),
        apart.joistSpacing(Length.mm(80).minus(NM), bit, bit));
    RulePack most = pack("uk", RuleKey.JOIST_HOLE_SIZE, 19, "mm");
    judged(
        along(most, Length.mm(19), Length.mm(900)),
        along(most, Length.mm(19).plus(NM).plus(NM), Length.mm(900)));
  }

  private static Verdict along(RulePack p, Length bit, Length at) {
    Length edge = new Length((Length.mm(200).nm() - bit.nm()) / 2);
    return p.joistBore(Length.mm(200), bit, edge, edge, at, Length.mm(3000), MemberMake.SOLID);
  }

  @Test
  void platesChannelsAndPower() {
    RulePack steel = pack("us", RuleKey.NAIL_PLATE_EDGE, 40, "mm");
    assertFalse(steel.needsNailPlate(Length.mm(100), Length.mm(20)));
    assertTrue(steel.needsNailPlate(Length.mm(100), Length.mm(20).plus(NM)));
    RulePack cut = pack("uk", RuleKey.UPRIGHT_CHANNEL, 0.2, "fraction");
    judged(
        cut.channel(Length.mm(100), Length.mm(20), true),
        cut.channel(Length.mm(100), Length.mm(20).plus(NM), true));
    RulePack far = pack("uk", RuleKey.BESIDE_POWER, 100, "mm");
    judged(
        far.fromPower(Length.mm(100), PowerWiring.SHEATHED, Length.mm(100)),
        far.fromPower(Length.mm(100).minus(NM), PowerWiring.SHEATHED, Length.mm(100)));
  }

  @Test
  void whatIsNotStatedStays() {
    RulePack p = pack("us", RuleKey.STUD_EDGE, 25, "mm");
    // IRC R502.8.1: a third of 184.15 mm
    Verdict v = joist(p, Length.mm(67), Length.mm(66));
    assertFalse(v.allowed());
    assertEquals(Severity.LAW, v.severity());
    assertEquals("IRC R502.8.1, R802.7.1", v.source());
  }

  @Test
  void looserIsToldFromStricter() {
    for (RuleKey key : RuleKey.values()) {
      for (Figure usual : key.usual("none")) {
        assertEquals(!key.least(), looser(key, usual, 1.01), key.word());
        assertEquals(key.least(), looser(key, usual, 0.99), key.word());
        assertFalse(looser(key, usual, 1), key.word());
      }
    }
  }

  private static boolean looser(RuleKey key, Figure usual, double times) {
    Figure f = LocalRules.figure("B", key, usual.value() * times, usual.unit(), "x");
    var stated = new LocalRules.Stated(f, Optional.empty());
    return new LocalRules("B", "b", "none", Map.of(key, stated)).looser(key, usual);
  }

  @Test
  void saidForASentence() {
    assertEquals("a third", TimberFigures.US_JOIST_SHARE.said());
    assertEquals("40 %", TimberFigures.US_STUD_BEARING.said());
    assertEquals("51 mm (2 in)", TimberFigures.US_JOIST_EDGE.said());
    assertEquals("16 mm (5/8 in)", TimberFigures.US_STUD_EDGE.said());
    assertEquals("32 mm (1-1/4 in)", TimberFigures.PLATE_EDGE.said());
    assertEquals("65 mm", TimberFigures.UK_JOIST_MOST.said());
  }
}
