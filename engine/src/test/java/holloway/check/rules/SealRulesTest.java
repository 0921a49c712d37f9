package holloway.check.rules;

import static holloway.check.ToySteps.p;
import static holloway.check.rules.Found.find;
import static holloway.check.rules.Found.of;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.check.ToyHouse;
import holloway.check.ToyPlan;
import holloway.check.ToySteps;
import holloway.finding.Finding;
import holloway.finding.Severity;
import holloway.framing.MemberKind;
import holloway.geometry.Box;
import holloway.hollow.SiteKind;
import holloway.house.Fill;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is opened between two spaces is closed again: plates, fire blocks, the wall of a garage. */
class SealRulesTest {
  private static final long MM = ToyHouse.MM;

  @Test
  void holesThroughPlatesAreToBeSealed() {
    List<Finding> found = of("seal-at-plate", find(ToyPlan.good(), ToyHouse.build()));
    assertEquals(2, found.size());
    assertEquals(Severity.LAW, found.get(0).severity());
    assertFalse(found.get(0).broken(), "a duty, not a breach");
    assertTrue(found.get(0).source().contains("R302.11"));
    assertEquals(Optional.of(ToySteps.p(-57, 1000, 2362)), found.get(0).place().at());
  }

  /** C3-4 asks for closed openings at ceiling level too; the card and the price seal them. */
  @Test
  void aHoleThroughACeilingIsToBeSealed() {
    LargerToy toy = new LargerToy(ToyHouse.build());
    toy.member(
        "shop/ceiling",
        MemberKind.LINING,
        new Box(0, 4000 * MM, 0, 3000 * MM, 2387 * MM, 2400 * MM));
    toy.site(
        "shop/ceiling/1",
        SiteKind.CEILING,
        p(2000, 1400, 2387),
        p(2000, 1400, 2400),
        "shop/ceiling");
    List<Finding> found = of("seal-at-plate", find(toy.plan(13), toy.house()));
    assertEquals(
        List.of("shop/ceiling/1"),
        found.stream().map(f -> f.place().id()).filter(i -> i.startsWith("shop")).toList());
  }

  @Test
  void aPlateHoleInACommonHouseIsNoGarageMatter() {
    assertEquals(List.of(), of("garage-separation", find(ToyPlan.good(), ToyHouse.build())));
  }

  @Test
  void aHoleAndABoxThroughTheGarageSeparationAreToBeSealed() {
    LargerToy toy = new LargerToy(ToyHouse.build(Fill.EMPTY, true));
    toy.site(
        "east/board/2000",
        SiteKind.WALL_BOARD,
        p(4013, 1400, 300),
        p(4000, 1400, 300),
        "east/board-1");
    List<Finding> found = of("garage-separation", find(toy.plan(13), toy.house()));
    assertEquals(
        List.of("east/board/2000", "desk"), found.stream().map(f -> f.place().id()).toList());
    assertTrue(found.get(0).source().contains("R302.5.3"));
    assertTrue(found.get(1).text().contains("box for desk"));
  }

  @Test
  void aBoreOfAGarageCeilingIntoAChaseOfTheStoreyAboveIsOneUnderARoom() {
    ToyCase bored = ToyCase.toy().garage().ceilingBored(2001);
    assertEquals(0, of("garage-ceiling", bored.find("cat6", 12)).size());
    assertEquals(1, of("garage-ceiling", bored.floorOver().find("cat6", 12)).size());
  }

  @Test
  void aFireBlockThatIsBoredIsToBeClosed() {
    LargerToy toy = new LargerToy(ToyHouse.build());
    toy.member(
        "east/block",
        MemberKind.FIRE_BLOCK,
        new Box(4013 * MM, 4101 * MM, 1219 * MM, 1581 * MM, 1181 * MM, 1219 * MM));
    toy.site(
        "east/block/1400", SiteKind.BLOCK, p(4057, 1400, 1181), p(4057, 1400, 1219), "east/block");
    assertEquals(1, of("fire-block-crossed", find(toy.plan(13), toy.house())).size());
    assertEquals(0, of("fire-block-crossed", find(ToyPlan.good(), ToyHouse.build())).size());
  }
}
