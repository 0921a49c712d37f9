package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.check.Referee;
import holloway.hollow.HollowKind;
import holloway.hollow.Site;
import holloway.pipeline.TwoStoreys;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Concrete between storeys: no bays, nothing bored; a shaft that is open through it still is. */
@Feature("solid floor")
class SolidFloorTest {
  private static final String JOISTS =
      "floor: { joists: 2x10, every: 16 in, run: east-west, from: south 16 in }";

  private static final String JOISTED = TwoStoreys.with("bearing: yes", "bearing: no");

  private static String solid(String pass) {
    return TwoStoreys.with(
        JOISTS, "floor: slab", "upper: closed", "upper: " + pass, "bearing: yes", "bearing: no");
  }

  @Test
  void noWayLeadsUpThroughIt() {
    assertEquals(List.of(), WrittenHouse.of(JOISTED).plan("outside").unrouted());
    WrittenHouse house = WrittenHouse.of(solid("closed"));
    assertEquals(1, house.plan("outside").unrouted().size());
    assertTrue(house.hollows().hollows().stream().noneMatch(h -> h.kind() == HollowKind.JOIST_BAY));
    assertTrue(
        house
            .findRefused("floor between garage and office")
            .orElseThrow()
            .why()
            .contains("core bore"));
  }

  @Test
  void noHoleOfTheHouseMeetsTheSlab() {
    // Concrete from 2476.5 to 2626.5 mm, over rooms and walls.
    WrittenHouse house = WrittenHouse.of(solid("closed"));
    for (Site s : house.hollows().sites()) {
      boolean through =
          Math.min(s.a().z(), s.b().z()) < 2_500_000_000L
              && Math.max(s.a().z(), s.b().z()) > 2_600_000_000L
              && !s.hollowA().startsWith("outside/");
      assertTrue(!through, s::id);
    }
  }

  @Test
  @Feature("shaft through a solid floor")
  void onlyAShaftThatIsOpenThroughItPasses() {
    WrittenHouse open = WrittenHouse.of(solid("open"));
    Site way =
        open.hollows().sites().stream()
            .filter(s -> s.id().equals("chase/shaft/way-upper"))
            .findFirst()
            .orElseThrow();
    // Board at 8 ft 1 in and 12.7 mm, then 150 mm of concrete.
    assertEquals(2_476_500_000L, way.a().z());
    assertEquals(2_626_500_000L, way.b().z());
    assertTrue(way.made());
    assertEquals(
        "a slab stands in the way (upper/slab-1--100--100)",
        WrittenHouse.of(solid("closed"))
            .findRefused("floor of chase shaft at upper")
            .orElseThrow()
            .why());
  }

  @Test
  void theRefereeRefusesAWayThroughIt() {
    WrittenHouse house = WrittenHouse.of(solid("closed"));
    Plan p = WrittenHouse.of(JOISTED).plan("outside");
    String told = Referee.check(p, house.hollows(), house.request()).refusals().toString();
    assertTrue(told.contains("is neither a crossing of the house"), told);
  }
}
