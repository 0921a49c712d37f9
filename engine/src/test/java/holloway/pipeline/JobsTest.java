package holloway.pipeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.plan.Plan;
import holloway.request.Profile;
import holloway.support.Chain;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * Three jobs worked leg by leg by hand. Lengths in metres, prices in minutes of the effort table.
 */
class JobsTest {
  private static final double M = 0.0006;

  private static Plan.PlanStep step(Plan plan, int i) {
    return plan.runs().get(0).steps().get(i);
  }

  private static List<String> ids(Plan plan) {
    return plan.runs().get(0).steps().stream().map(Plan.PlanStep::id).toList();
  }

  /** Cabinet in the garage, ceiling board and subfloor, chase, attic, inner wall, office desk. */
  @Test
  void officeDeskByChaseAndAttic() {
    Chain c = Chain.of(Chain.sample("alder-lane"));
    Plan plan = c.plan(Profile.LEAST_WORK, Set.of(), r -> r.equals("office desk/cat6-1"));
    assertEquals(List.of(), c.refusals(plan));
    assertEquals(
        List.of(
            "garage/surface",
            "chase/vent chase/floor-upper",
            "chase/vent chase/upper",
            "chase/vent chase/way-attic",
            "attic/main roof",
            "upper/main bedroom-office/1/top-plate/1420",
            "upper/main bedroom-office/1/bay-1230"),
        ids(plan));
    // Garage: cabinet at 5 ft (1.524), the clip line 40 mm under the ceiling at 2.5622: up 0.9982;
    // along the east wall from 4 ft (1.2192) to the chase's middle at 4.6101: 3.3909; up to 12 mm
    // off
    // the ceiling 0.028; across to the chase, 6.4904 - 6.0071 = 0.4833; the last 0.012.
    assertEquals(0.9982 + 3.3909 + 0.028 + 0.4833 + 0.012, step(plan, 0).m(), M);
    // Bore: 5/8 in board, 9-1/4 in of joist bay, 23/32 in of subfloor.
    assertEquals(0.015875 + 0.23495 + 0.0183, step(plan, 1).m(), M);
    // Chase: from the upper floor at 2.83135 to 13 mm under the attic's plates at 5.28245.
    assertEquals(5.28245 - 0.013 - 2.83135, step(plan, 2).m(), M);
    // Attic: up over a 2x4 chord and 25 mm, along lines 50 mm apart counted from its middle: x
    // 5.9877 to 10.9877, y 4.6028 to 1.4028, with a step of 19.4 and 7.3 mm to the line and of 4.15
    // and 0.55 mm off it, and down again.
    double rise = 0.0889 + 0.025;
    assertEquals(2 * rise + 0.0194 + 0.0073 + 3.2 + 5.0 + 0.00415 + 0.00055, step(plan, 4).m(), M);
    // Bay: plates' underside 5.28245 - 0.076 down to 16 in over the floor; the desk is 5 ft 1 in
    // along
    // (s 1.562), the bore in the middle of its bay (s 1.416): 0.14605 sideways.
    assertEquals(5.20645 - (2.83135 + 0.4064) + 0.14605, step(plan, 6).m(), M);

    // Works: cut-out in board 10; attic in summer 25 + 15; bore from the garage (4 + board 1 + void
    // 1 +
    // subfloor 2) x 1.0 + seal 2 = 10; two plies from the attic (4 + 2 x 2.5) x 1.5 + seal 2 =
    // 15.5.
    double works = 10 + 40 + 10 + 15.5;
    // Legs: garage clips 2 a metre; fish set-up 5 and 1.0 a metre in the chase; attic 0.9 a metre;
    // fish
    // set-up 5 and 1.2 a metre in an empty bay.
    double legs = 2 * 4.91242 + (5 + 1.0 * 2.4381) + 0.9 * 8.4592 + (5 + 1.2 * 2.11475);
    assertEquals(works + legs, plan.totals().minutes(), 0.01);
    assertEquals(2, plan.totals().holes());
    assertTrue(plan.totals().bound() <= plan.totals().objective());
    Plan.PlannedHole floor = plan.holes().get(0);
    assertEquals("from the garage", floor.method());
    assertEquals("room/garage", floor.stand());
    Plan.PlannedHole plate = plan.holes().get(1);
    assertEquals("attic/main roof", plate.stand());
    assertEquals(List.of("from a patch in the wall of the main bedroom"), plate.otherMethods());
  }

  /** Fewest holes for the office by chase, by attic alone, and outside, each counted by hand. */
  @Test
  void fewestHolesForTheOffice() {
    Chain c = Chain.of(Chain.sample("alder-lane"));
    // Chase: its floor over the garage and the office wall's plates.
    assertEquals(2, holes(c, Set.of("outside", "surface")));
    // Attic without the chase: garage ceiling into a joist bay, bottom and top plate of a wall over
    // it
    // and a patch in that wall (the outer wall of the bonus room, whose cut-out would save it, ends
    // under the hip where nobody reaches), the office wall's plates.
    assertEquals(5, holes(c, Set.of("outside", "surface", "chase")));
    // Outside without attic and chase: no hole at the office wall is reached from outside (it is an
    // inner wall), so cable shows: garage wall and the floor between kitchen and office.
    assertEquals(2, holes(c, Set.of("attic", "chase")));
  }

  private static int holes(Chain c, Set<String> bans) {
    Plan p = c.plan(Profile.FEWEST_HOLES, bans, r -> r.equals("office desk/cat6-1"));
    assertEquals(List.of(), c.refusals(p));
    return p.totals().holes();
  }

  /**
   * Ground-floor television on an outer wall, no chase, no attic, nothing in sight: what must be
   * opened.
   */
  @Test
  void televisionWithoutAChase() {
    Chain c = Chain.of(Chain.sample("alder-lane"));
    Plan plan =
        c.plan(
            Profile.LEAST_WORK,
            Set.of("chase", "attic", "outside", "surface"),
            r -> r.equals("television/cat6-1"));
    assertEquals(List.of(), c.refusals(plan));
    // The joists run east-west from the garage to the television's wall, so no joist is bored; but
    // two
    // bearing walls (garage wall, kitchen-living room) have blocking on them. Each block is bored
    // from a
    // ceiling patch beside it, and the top plates over the television from its own cut-out.
    Set<String> kinds =
        plan.holes().stream().map(Plan.PlannedHole::kind).collect(Collectors.toSet());
    assertEquals(Set.of("ceiling board", "blocking between joists", "top plate"), kinds);
    assertEquals(2, plan.totals().patches());
    // Ceiling 1, blocks 2, plates 1, patches 2.
    assertEquals(6, plan.totals().holes());
    Plan.PlannedHole plates =
        plan.holes().stream().filter(h -> h.kind().equals("top plate")).findFirst().orElseThrow();
    assertEquals("from the cut-out of television", plates.method());
    // Ceiling board from the garage: 4 + 1 + 2 = 7. A block from its patch: (4 + 5) x 1.3 + 2 =
    // 13.7.
    // Two plies through the cut-out with a long bit: (4 + 2 x 2.5) x 2.2 + 2 = 21.8.
    double works = 10 + 2 * 70 + 7 + 2 * 13.7 + 21.8;
    double legs = plan.totals().minutes() - works;
    assertEquals(
        legs,
        plan.runs().get(0).steps().stream().mapToDouble(s -> s.minutes().orElse(0.0)).sum(),
        0.001);
  }

  private static final String RANCH =
      """
      house: Eave House
      place: us
      built: 1978
      outer-walls: { studs: 2x4, every: 16 in, fill: faced-batt }
      levels:
        main: { ceiling-height: 8 ft, floor: FLOOR }
      rooms:
        store: { level: main, size: 2 m x 9 m, plain: yes }
        lounge: { level: main, size: 9 m x 9 m, east-of: store, align: south }
      openings:
        - { door, between: [store, lounge], from: south 1 m, width: 800 mm }
      roof:
        - { over: main, shape: gable, ridge: east-west, eaves: 16 in, frame: trusses, chord: 2x4, every: 24 in,
            insulation: 10 in loose, hatch: { in: store, at: [west 1 m, south 4.5 m], size: 22 in x 30 in }, ROOF }
      cabinet: { in: store, wall: west, from: south 4.5 m, height: 1.5 m }
      outlets:
        - { name: north desk, in: lounge, wall: north, from: west 4 m, height: 400 mm, cables: [cat6] }
      """;

  private static final String CRAWL =
      "{ joists: 2x8, every: 16 in, run: north-south, over: { crawlspace: { clearance: 750 mm, access:"
          + " { floor-hatch: { in: store, at: [west 1 m, south 2 m], size: 600 mm x 600 mm } } } } }";

  @Test
  void underALowEaveTheCrawlspaceWins() {
    Chain c = Chain.of(RANCH.replace("FLOOR", CRAWL).replace("ROOF", "pitch: 4/12"));
    // Over the plate's middle 3.94 + 0.58 - 3.69 in = 21 mm are left under the top chord; a bore
    // may
    // stand up to 20 mm further in, which gives 20 / 3 = 7 mm more.
    assertTrue(
        c.routed().refused().stream()
            .anyMatch(
                r ->
                    r.what().startsWith("top plate")
                        && r.why().matches("only 2[1-8] mm between.*")),
        "the eave is refused");
    Plan plan = c.plan(Profile.LEAST_WORK, Set.of("outside", "surface"), r -> true);
    assertEquals(List.of(), c.refusals(plan));
    assertEquals(List.of("crawlspace"), plan.totals().zones());
    assertTrue(plan.holes().stream().anyMatch(h -> h.kind().equals("bottom plate")));
    // Plate 38 and subfloor from the crawlspace: (4 + 2.5 + 2) x 1.6 + 2.
    Plan.PlannedHole plate =
        plan.holes().stream()
            .filter(h -> h.kind().equals("bottom plate"))
            .findFirst()
            .orElseThrow();
    assertEquals((4 + 2.5 + 2) * 1.6 + 2, plate.minutes(), 1e-6);
  }

  @Test
  void withARaisedHeelAndNoCrawlspaceTheAtticWins() {
    Chain c = Chain.of(RANCH.replace("FLOOR", "slab").replace("ROOF", "pitch: 12/12, heel: 20 in"));
    // Heel 508 + 44 - 88.9 x sqrt(2) = 427 mm over the plate's middle: more than the 330 mm of a
    // tool.
    Plan plan = c.plan(Profile.LEAST_WORK, Set.of("outside", "surface"), r -> true);
    assertEquals(List.of(), c.refusals(plan));
    assertEquals(List.of("attic"), plan.totals().zones());
    assertTrue(plan.holes().stream().anyMatch(h -> h.kind().equals("top plate")));
    assertFalse(plan.holes().stream().anyMatch(h -> h.kind().equals("bottom plate")));
  }
}
