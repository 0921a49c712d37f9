package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.check.Referee;
import holloway.hollow.Hollow;
import holloway.hollow.HollowHouse;
import holloway.hollow.Site;
import holloway.plan.Plan;
import holloway.request.Profile;
import holloway.support.Chain;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * An L-shaped house: the wing's gable runs onto the main roof's slope. Through the valley one gets
 * from attic to attic only where the main roof's sheathing was cut out below the wing's.
 */
@Feature("valley cut through")
class ValleyTest {
  /** The wing lies south of the west half of the main part, 6 m wide; its ridge runs up to it. */
  private static final String HOUSE =
      """
      house: Valley House
      place: us
      built: 1990
      outer-walls: { studs: 2x4, every: 16 in, fill: faced-batt }
      inner-walls: { studs: 2x4, every: 16 in }
      levels: { main: { ceiling-height: 8 ft, floor: slab } }
      rooms:
        hall: { level: main, size: 8 m x 6 m, plain: yes }
        den: { level: main, size: 6 m x 3 m, south-of: hall, align: west, shift: 1 m, ceiling-height: HIGH }
        study: { level: main, size: 6 m x 2 m, south-of: den, align: west, ceiling-height: HIGH }
      roof:
        - { name: main roof, over: [hall], shape: MAIN, FRAME, hatch: { in: hall, at: [west 4 m, south 3 m], size: 22 in x 30 in } }
        - { name: wing, over: [den, study], shape: gable, ridge: RIDGE, FRAME, joins: [JOIN] }
      cabinet: { in: hall, wall: north, from: west 4 m, height: 1.5 m }
      outlets:
        - { name: desk, in: den, wall: south, from: west 2.8 m, height: 400 mm, cables: [cat6] }
      """;

  private static final String FRAME =
      "pitch: 8/12, frame: rafters, chord: 2x6, every: EVERY, insulation: 10 in loose";
  private static final String CUT = "{ to: main roof, valley: cut-through }";
  private static final String LAID = "{ to: main roof, valley: laid-over }";

  private static Chain house(String join) {
    return house(join, "north-south", "8 ft", "gable, ridge: east-west", "24 in");
  }

  private static Chain house(String join, String ridge, String high, String main, String every) {
    return Chain.of(
        HOUSE
            .replace("JOIN", join)
            .replace("RIDGE", ridge)
            .replace("HIGH", high)
            .replace("MAIN", main)
            .replace("FRAME", FRAME)
            .replace("EVERY", every));
  }

  private static String hole(String size) {
    return "{ to: main roof, valley: laid-over, size: " + size + " }";
  }

  private static Plan plan(Chain c) {
    Plan p = c.plan(Profile.LEAST_WORK, Set.of("outside", "surface"), r -> true);
    assertEquals(List.of(), c.refusals(p));
    return p;
  }

  private static List<Site> ways(Chain c) {
    return c.house().sites().stream()
        .filter(s -> s.id().startsWith("attic/wing/way-to-main roof"))
        .toList();
  }

  private static void isShut(Chain c, String why) {
    assertEquals(1, plan(c).unrouted().size());
    assertTrue(
        c.house().refused().stream()
            .filter(r -> r.what().equals("opening from attic wing into main roof"))
            .anyMatch(r -> r.why().contains(why)),
        () -> c.house().refused().toString());
  }

  @Test
  void theWayLeadsThroughTheValley() {
    Plan p = plan(house(CUT));
    assertEquals(List.of(), p.unrouted());
    assertEquals(List.of("attic", "attic-low"), p.totals().zones().stream().sorted().toList());
  }

  @Test
  @Feature("valley laid over")
  void sheathingLeftInIsNoWay() {
    assertEquals(1, plan(house(LAID)).unrouted().size());
    assertEquals(List.of(), ways(house(LAID)));
  }

  /**
   * At x from an eave the wing leaves 6.35 mm and two thirds of x, less the 139.7 mm of its ceiling
   * joists: the 150 mm that an arm needs at both rafters of a gap are there 425 mm in.
   */
  @Test
  void theGapsFollowFromTheTwoRoofs() {
    // Rafters every 609.6 mm from the main roof's west end at -101.6 mm, 38.1 mm thick; the wing's
    // eaves at 898.4 and 7101.6 mm: gaps from 1746.25 mm on, the last one ends at 6584.95.
    long[] at = ways(house(CUT)).stream().mapToLong(s -> s.a().x()).sorted().toArray();
    assertEquals(8, at.length);
    assertEquals((1746.25 + 2317.75) / 2, at[0] / 1e6, 0.1);
    assertEquals((6584.95 + 6013.45) / 2, at[7] / 1e6, 0.1);
  }

  /** A body passes between two rafters: 22-1/2 in are enough, 12 in less 1-1/2 in are not. */
  @Test
  void aBodyGoesOnBetweenTheRafters() {
    Hollow main = house(CUT).house().findHollow("attic/main roof").orElseThrow();
    long low = main.area().orElseThrow().yRange().lo();
    Hollow alone = house(LAID).house().findHollow("attic/main roof").orElseThrow();
    // The wall's whole width, up to the den's face, instead of 291 mm short of it.
    assertEquals(5114.3, low / 1e6, 0.1);
    assertTrue(alone.area().orElseThrow().yRange().lo() > low + 250_000_000);
    isNarrow(house(CUT, "north-south", "8 ft", "gable, ridge: east-west", "12 in"));
  }

  private static void isNarrow(Chain c) {
    assertEquals(1, plan(c).unrouted().size());
    assertTrue(c.house().findHollow("attic/wing").isEmpty());
  }

  /** A hole cut in sheathing that was left in: through it alone, and only a body's height of it. */
  @Test
  @Feature("hole in a valley's sheathing")
  void aHoleInTheSheathingIsStatedBySize() {
    assertEquals(List.of(), plan(house(hole("1.5 m x 700 mm"))).unrouted());
    // From 3250 to 4750 mm, in the middle of the wall: a part of a gap and two more.
    assertEquals(3, ways(house(hole("1.5 m x 700 mm"))).size());
    assertEquals(1, plan(house(hole("1.5 m x 500 mm"))).unrouted().size());
  }

  /** Somebody who has the ridges the wrong way round is told. */
  @Test
  void aRidgeAlongTheWallRunsOntoNothing() {
    isShut(
        house(CUT, "east-west", "8 ft", "gable, ridge: east-west", "24 in"),
        "do not run on level over that wall");
  }

  /** The main roof's gable end stands there: no slope comes down to the wing. */
  @Test
  void anEndWallIsNoValley() {
    isShut(
        house(CUT, "north-south", "8 ft", "gable, ridge: north-south", "24 in"),
        "does not come down to that wall");
  }

  @Test
  void aHigherCeilingOutOfReach() {
    isShut(house(CUT, "north-south", "12 ft", "gable, ridge: east-west", "24 in"), "out of reach");
  }

  @Test
  void theRefereeMeasuresTheValley() {
    Chain open = house(CUT);
    Plan p = plan(open);
    said(p, open, house(LAID), "where no opening is stated");
    said(p, open, house(hole("300 mm x 700 mm")), "where no opening is stated");
    said(p, open, house(hole("1.5 m x 500 mm")), "further than an arm reaches under this roof");
    Chain wrong = house(CUT, "north-south", "8 ft", "gable, ridge: north-south", "24 in");
    said(p, open, wrong, "is stated to pass a valley, but main roof lies");
    Chain along = house(CUT, "east-west", "8 ft", "gable, ridge: east-west", "24 in");
    said(p, open, along, "above the slope of wing");
    // Rafters every 12 in stand in the gaps of the others.
    said(
        p,
        open,
        house(CUT, "north-south", "8 ft", "gable, ridge: east-west", "12 in"),
        "passes through the rafter");
  }

  private static void said(Plan p, Chain from, Chain to, String what) {
    HollowHouse h = from.house();
    HollowHouse mixed =
        new HollowHouse(to.framed(), h.hollows(), h.sites(), h.stands(), h.accesses(), h.refused());
    String faults = Referee.check(p, mixed, from.request()).refusals().toString();
    assertTrue(faults.contains(what), faults);
  }
}
