package holloway.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.check.ToyHouse;
import holloway.check.ToyPlan;
import holloway.hollow.AccessPlace;
import holloway.hollow.Hollow;
import holloway.hollow.HollowHouse;
import holloway.hollow.HollowKind;
import holloway.house.Lining;
import holloway.plan.Plan;
import holloway.units.UnitSystem;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a card says, on a house of round numbers. */
class HoleCardsTest {
  private final Map<String, HoleCard> cards =
      HoleCards.of(ToyPlan.good(), ToyHouse.build(), UnitSystem.METRIC);

  @Test
  void theDrillStandsInTheAtticAndComesOutInTheBay() {
    HoleCard card = cards.get("west/top/1000");
    assertTrue(
        card.sideA().get(0).startsWith("181 mm from the face of the truss chord"), card::toString);
    assertTrue(card.sideB().get(0).startsWith("1.000 m from"), card::toString);
    assertEquals("13 mm wood bit", card.bit());
    assertEquals("", card.extension());
    assertEquals("straight down", card.angle());
    assertEquals("76 mm top plate; through at 76 mm", card.breakthrough());
    assertEquals("", card.checkFirst());
  }

  @Test
  void inchesAreWrittenTheWayATapeReads() {
    HoleCard card =
        HoleCards.of(ToyPlan.good(), ToyHouse.build(), UnitSystem.FT_IN).get("west/top/1000");
    assertEquals("1/2 in wood bit", card.bit());
    assertTrue(card.sideA().get(0).startsWith("7-1/8 in from"), card::toString);
  }

  /** Two tape lines of 5 mm, a wall known to 5 mm, 6.35 mm out of plumb: root of 25+25+25+40.3. */
  @Test
  void errorsAddAsTheRootOfTheSumOfSquares() {
    assertEquals(10.7, cards.get("west/top/1000").toleranceMm(), 0.05);
  }

  @Test
  void aSideThatShowsNothingAsksForAPilotWire() {
    HollowHouse toy = ToyHouse.build();
    List<Hollow> hollows =
        toy.hollows().stream().map(h -> h.id().equals("west/bay-800") ? chase(h) : h).toList();
    HollowHouse dark = new HollowHouse(toy.framed(), hollows, toy.sites(), toy.stands(), List.of());
    HoleCard card = HoleCards.of(ToyPlan.good(), dark, UnitSystem.METRIC).get("west/top/1000");
    assertEquals(List.of(HoleCards.PILOT), card.sideB());
  }

  /** Between two closed spaces the drill stands behind the opening, whichever end that is. */
  @Test
  void aDrillFedInThroughAPatchStandsInTheHollowBehindIt() {
    String attic =
        ToyHouse.build().hollows().stream()
            .filter(h -> h.kind() == HollowKind.ATTIC)
            .findFirst()
            .orElseThrow()
            .id();
    assertEquals("straight up", angleThrough("west/bay-800"));
    assertEquals("straight down", angleThrough(attic));
  }

  private static String angleThrough(String hollow) {
    HollowHouse toy = ToyHouse.build();
    List<Hollow> closed = toy.hollows().stream().map(HoleCardsTest::closed).toList();
    AccessPlace patch =
        new AccessPlace(
            "opening",
            hollow,
            toy.sites().get(0).a(),
            "room",
            AccessPlace.Kind.WALL_PATCH,
            Lining.BOARD);
    HollowHouse house =
        new HollowHouse(toy.framed(), closed, toy.sites(), toy.stands(), List.of(patch), List.of());
    Plan plan = madeFrom("opening");
    return HoleCards.of(plan, house, UnitSystem.METRIC).get("west/top/1000").angle();
  }

  private static Hollow closed(Hollow h) {
    return new Hollow(
        h.id(), h.kind(), h.frame(), h.clear(), h.area(), h.fill(), h.owner(), Optional.empty());
  }

  private static Plan madeFrom(String stand) {
    Plan p = ToyPlan.good();
    List<Plan.PlannedHole> holes =
        p.holes().stream()
            .map(
                h ->
                    new Plan.PlannedHole(
                        h.id(),
                        h.label(),
                        h.kind(),
                        h.diameterMm(),
                        h.depthMm(),
                        h.at(),
                        h.between(),
                        h.method(),
                        stand,
                        h.works(),
                        h.minutes(),
                        h.runs(),
                        h.assumed(),
                        h.otherMethods(),
                        h.bores(),
                        h.axis(),
                        h.through()))
            .toList();
    return new Plan(
        p.format(),
        p.house(),
        p.profile(),
        p.perMinute(),
        p.inputs(),
        p.totals(),
        p.runs(),
        holes,
        p.unrouted(),
        p.works(),
        p.findings(),
        p.materials(),
        p.survey());
  }

  private static Hollow chase(Hollow h) {
    return new Hollow(
        h.id(), HollowKind.CHASE, h.frame(), h.clear(), h.area(), h.fill(), "chase", h.stand());
  }

  @Test
  void everyHoleOfAPlanHasACard() {
    Plan good = ToyPlan.good();
    assertEquals(
        good.holes().stream().map(Plan.PlannedHole::id).sorted().toList(),
        List.copyOf(cards.keySet()));
  }
}
