package holloway.check.rules;

import static holloway.check.ToySteps.p;
import static holloway.check.rules.Found.find;
import static holloway.check.rules.Found.of;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.check.Spoiled;
import holloway.check.ToyHouse;
import holloway.finding.Finding;
import holloway.finding.Severity;
import holloway.framing.MemberKind;
import holloway.geometry.Box;
import holloway.hollow.Site;
import holloway.hollow.SiteKind;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a bore leaves of plates, joists and the outer wall: within its limit, and just over it. */
class BoringRulesTest {
  private static final long MM = ToyHouse.MM;

  @Test
  void aWideHoleInANarrowPlateWantsSteel() {
    // 88 mm core: (88 - d) / 2 >= 31.75 mm holds up to 24.5 mm
    assertEquals(0, of("nail-plate", find(Spoiled.withBit(22), ToyHouse.build())).size());
    assertEquals(1, of("nail-plate", find(Spoiled.withBit(25), ToyHouse.build())).size());
    assertEquals(
        Severity.PRACTICE,
        of("nail-plate", find(Spoiled.withBit(32), ToyHouse.build())).get(0).severity());
  }

  @Test
  void aJoistTakesAThirdOfItsDepthTwoInchesFromTheEdges() {
    assertEquals(List.of(), of("bored-member", joist(184, 92, 51)));
    // 184 / 3 = 61 mm, but 92 - 32 - 51 < 0 for an edge of 2 in off centre
    List<Finding> low = of("bored-member", joist(184, 60, 38));
    assertEquals(1, low.size());
    assertTrue(low.get(0).broken());
    assertEquals(Severity.LAW, low.get(0).severity());
    assertTrue(
        of("bored-member", joist(140, 70, 51))
            .get(0)
            .text()
            .contains("third of the joist's depth"));
  }

  private static List<Finding> joist(long depth, long height, int bit) {
    LargerToy toy = new LargerToy(ToyHouse.build());
    toy.member(
        "floor/joist",
        MemberKind.JOIST,
        new Box(0, 4000 * MM, 1000 * MM, 1038 * MM, -depth * MM, 0));
    toy.site(
        "floor/joist/2000",
        SiteKind.JOIST,
        p(2000, 1000, height - depth),
        p(2000, 1038, height - depth),
        "floor/joist");
    return find(toy.plan(bit), toy.house());
  }

  @Test
  void twoHolesInOnePlateStandThreeDiametersApart() {
    assertEquals(0, of("holes-apart", twoInOnePlate(39)).size());
    List<Finding> near = of("holes-apart", twoInOnePlate(38));
    assertEquals(1, near.size());
    assertEquals(Severity.PRACTICE, near.get(0).severity());
    assertTrue(near.get(0).broken());
  }

  private static List<Finding> twoInOnePlate(long apart) {
    LargerToy toy = new LargerToy(ToyHouse.build());
    toy.site(
        "west/top/other",
        SiteKind.TOP_PLATE,
        p(-57, 1000 + apart, 2324),
        p(-57, 1000 + apart, 2400),
        "west/top-1",
        "west/top-2");
    return find(toy.plan(13), toy.house());
  }

  @Test
  void aHoleToTheOutsideSlopesDown() {
    LargerToy toy = new LargerToy(ToyHouse.build());
    toy.outside("outside/east");
    toy.site(
        new Site(
            "east/skin/1400",
            SiteKind.OUTER_SKIN,
            p(4101, 1400, 500),
            p(4114, 1400, 500),
            "east/bay-1200",
            "outside/east",
            List.of("east/board-0"),
            List.of(),
            25,
            32,
            false,
            false));
    List<Finding> found = of("outer-wall-hole", find(toy.plan(13), toy.house()));
    assertEquals(1, found.size());
    assertTrue(found.get(0).text().contains("sloping down to the outside"));
  }
}
