package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.check.Referee;
import holloway.hollow.Hollow;
import holloway.hollow.HollowHouse;
import holloway.hollow.HollowKind;
import holloway.house.Fill;
import holloway.plan.Plan;
import holloway.request.Profile;
import holloway.support.Chain;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Three rooms in a row under a flat roof: between its joists, along them, and nowhere else. */
@Feature("flat roof")
class FlatRoofTest {
  private static final String HOUSE =
      """
      house: Flat House
      place: us
      built: 1990
      outer-walls: { studs: 2x4, every: 16 in, fill: faced-batt }
      inner-walls: { studs: 2x4, every: 16 in, bearing: BEARING }
      levels: { main: { ceiling-height: 8 ft, floor: slab } }
      rooms:
        store: { level: main, size: 3 m x 4 m }
        hall: { level: main, size: 2 m x 4 m, east-of: store, align: south }
        den: { level: main, size: 3 m x 4 m, east-of: hall, align: south }
      roof:
        - { name: top, over: main, shape: flat, RUN frame: rafters, chord: 2x8, every: 16 in, insulation: FILL }
      cabinet: { in: store, wall: west, from: south 2 m, height: 1.5 m }
      outlets:
        - { name: desk, in: den, wall: east, from: south 2 m, height: 400 mm, cables: [cat6] }
      """;

  private static Chain house(String run, String bearing, String fill) {
    return Chain.of(HOUSE.replace("RUN", run).replace("BEARING", bearing).replace("FILL", fill));
  }

  private static final String ALONG = "run: east-west,";

  private static Plan plan(Chain c) {
    Plan p = c.plan(Profile.LEAST_WORK, Set.of("outside", "surface"), r -> true);
    assertEquals(List.of(), c.refusals(p));
    return p;
  }

  @Test
  void fromWallToWallBetweenTwoJoists() {
    Chain c = house(ALONG, "no", "none");
    Plan p = plan(c);
    assertEquals(1, p.runs().size());
    List<Plan.PlanStep> inRoof =
        p.runs().get(0).steps().stream()
            .filter(s -> s.id().startsWith("top/roof-bay-") && s.kind().equals("leg"))
            .toList();
    // Between the plates' bores at -45.15 and 8273.75 mm: 8318.9 mm is more than one fish of 7.5 m,
    // so one patch in the ceiling of the hall, 160 mm from its west wall, parts it in two: from
    // there
    // to the den 4999.45 + 88.9 aside + 92.075 down at 1.2 minutes a metre and 5 to set up.
    assertEquals(2, inRoof.size());
    assertEquals(5 + 5.180425 * 1.2, inRoof.get(1).minutes().orElseThrow(), 0.001);
    assertEquals(
        1,
        p.works().stream()
            .filter(w -> w.kind().equals("patch") && w.id().contains("/ceiling-patch-"))
            .count());
    // From outer face to outer face 8431.8 mm, less a block of 38 mm at each end; 7-1/4 in deep.
    Hollow bay = c.house().findHollow(inRoof.get(1).id()).orElseThrow();
    assertEquals(8431.8 - 2 * 38, bay.clear().x().length() / 1e6, 0.1);
    assertEquals(184.15, bay.clear().z().length() / 1e6, 0.01);
  }

  @Test
  void nothingCrossesTheJoists() {
    assertEquals(1, plan(house("run: north-south,", "no", "none")).unrouted().size());
  }

  @Test
  void unlessTheirRunIsStatedThereIsNoSpace() {
    Chain c = house("", "no", "none");
    assertTrue(c.house().hollows().stream().noneMatch(h -> h.kind() == HollowKind.JOIST_BAY));
    assertEquals(1, plan(c).unrouted().size());
  }

  @Test
  void aBearingWallUnderThemIsBlocked() {
    assertEquals(1, plan(house(ALONG, "yes", "none")).unrouted().size());
  }

  @Test
  void whatFillsThemCounts() {
    // A fish in a filled bay is 3 m at most: 8318.9 mm need two patches in ceilings or more, where
    // one does between bare joists; and in foam there is no way.
    Plan filled = plan(house(ALONG, "no", "6 in unfaced-batt"));
    assertTrue(
        filled.works().stream()
                .filter(w -> w.kind().equals("patch") && w.id().contains("/ceiling-patch-"))
                .count()
            >= 2);
    assertEquals(1, plan(house(ALONG, "no", "6 in foam")).unrouted().size());
    Chain unknown =
        Chain.of(
            HOUSE.replace("RUN", ALONG).replace("BEARING", "no").replace(", insulation: FILL", ""));
    assertTrue(
        unknown.house().hollows().stream()
            .filter(h -> h.kind() == HollowKind.JOIST_BAY)
            .allMatch(h -> h.fill() == Fill.UNKNOWN));
  }

  @Test
  void theRefereeSeesItByItself() {
    Chain open = house(ALONG, "no", "none");
    assertSays(open, house("run: north-south,", "no", "none"), "mm across the joists of the roof");
    assertSays(open, house("", "no", "none"), "which states no bays");
    // 9 ft instead of 8: the ceiling lies 305 mm over the leg
    Chain higher =
        Chain.of(
            HOUSE
                .replace("RUN", ALONG)
                .replace("BEARING", "no")
                .replace("FILL", "none")
                .replace("ceiling-height: 8 ft", "ceiling-height: 9 ft"));
    assertSays(open, higher, "not between ceiling and roof");
  }

  /** The hollows and crossings of one house in another. */
  private static void assertSays(Chain open, Chain other, String what) {
    HollowHouse h = open.house();
    HollowHouse mixed =
        new HollowHouse(
            other.framed(), h.hollows(), h.sites(), h.stands(), h.accesses(), h.refused());
    String faults = Referee.check(plan(open), mixed, other.request()).refusals().toString();
    assertTrue(faults.contains(what), faults);
  }
}
