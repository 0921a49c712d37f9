package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.pipeline.TwoStoreys;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * What a person asks for, in the two-storey house: from the garage through its ceiling and the
 * office's floor, unless something is said against it.
 */
class WantsTest {
  private static final String DESK =
      "- { name: desk, in: office, wall: east, from: south 6 ft, height: 16 in, cables: [cat6] }";
  private static final String WEST = DESK.replace("wall: east", "wall: west");

  private static Plan plan(String... changes) {
    Plan p = WrittenHouse.of(TwoStoreys.with(changes)).plan("outside");
    assertEquals(List.of(), p.unrouted());
    return p;
  }

  private static Plan wishing(String wishes) {
    return plan(DESK, DESK + "\nwishes: { " + wishes + " }");
  }

  private static List<String> steps(Plan p) {
    return p.runs().stream().flatMap(r -> r.steps().stream()).map(Plan.PlanStep::id).toList();
  }

  @Test
  @Feature("ban")
  void aHoleThatIsBannedIsNotMade() {
    String hole = "office/floor/3600-1830";
    assertTrue(steps(plan()).contains(hole), steps(plan())::toString);
    Plan other = wishing("bans: [" + hole + "]");
    assertFalse(steps(other).contains(hole));
    assertTrue(other.totals().objective() > plan().totals().objective());
  }

  @Test
  @Feature("pinned run")
  void aRunGoesThroughTheBayItIsPinnedTo() {
    String bay = "upper/floor/bay-2050-40";
    assertFalse(steps(plan()).contains(bay));
    Plan pinned = wishing("through: { desk/cat6-1: " + bay + " }");
    assertTrue(steps(pinned).contains(bay), steps(pinned)::toString);
    assertTrue(pinned.totals().objective() > plan().totals().objective());
  }

  @Test
  @Feature("point-to-point run")
  void twoOutletsBackToBackAreJoinedInTheirBay() {
    Plan p =
        plan(
            DESK,
            DESK
                + """

                  - { name: bench, in: bedroom, wall: west, from: south 6 ft, height: 16 in, cables: [cat6] }
                links:
                  - { from: desk, to: bench, cable: cat6 }""");
    Plan.PlannedRun link =
        p.runs().stream().filter(r -> r.id().startsWith("desk to bench")).findFirst().orElseThrow();
    // Both boxes are cut into the two sides of one bay at the same height: nothing between them.
    assertEquals(0, link.routeM(), 1e-9);
    assertEquals(2, p.totals().holes());
  }

  @Test
  @Feature("spare run")
  void aSpareTakesTheSameHolesWithTheNextBit() {
    Plan one = plan();
    Plan two = plan("cables: [cat6]", "cables: [cat6], spare: 1");
    assertEquals(1, one.runs().size());
    assertEquals(2, two.runs().size());
    assertEquals(one.totals().holes(), two.totals().holes());
    // Two cables of 29.2 mm2 may fill 31 %: 188.5 mm2 is a 16 mm bit, half a minute more a bore.
    assertEquals(List.of(16, 16), two.holes().stream().map(Plan.PlannedHole::diameterMm).toList());
    assertEquals(one.totals().routeM(), two.runs().get(1).routeM(), 1e-9);
  }

  @Test
  @Feature("garage separation")
  void whatPassesTheGaragesCeilingIsSealed() {
    assertEquals(1, separations(plan()));
    assertEquals(0, separations(plan(", garage: yes", ", plain: yes")));
  }

  private static long separations(Plan p) {
    return p.findings().stream().filter(f -> f.rule().equals("garage-separation")).count();
  }

  @Test
  @Feature("balloon framing")
  void betweenTheStudsOfABalloonFrameItFallsFromStoreyToStorey() {
    String[] west = {
      DESK,
      WEST,
      "in: garage, wall: east, from: south 4 ft",
      "in: garage, wall: west, from: south 6 ft"
    };
    // A platform's plates and floor lie between: up through the ceiling, and up through the plate.
    assertEquals(2, plan(west).totals().holes());
    Plan balloon =
        plan(west[0], west[1], west[2], west[3], "built: 1994", "built: 1994\nframing: balloon");
    assertEquals(0, balloon.totals().holes());
  }
}
