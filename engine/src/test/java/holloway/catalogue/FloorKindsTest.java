package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.pipeline.TwoStoreys;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Two points of one ceiling, 2 ft apart: one joist of the floor over them stands between. */
class FloorKindsTest {
  private static final String DESK =
      "- { name: desk, in: office, wall: east, from: south 6 ft, height: 16 in, cables: [cat6] }";
  private static final String POINTS =
      """
      - { name: one, in: den, ceiling: [west 5 ft, south 4 ft], cables: [] }
        - { name: two, in: den, ceiling: [west 5 ft, south 6 ft], cables: [] }
      links:
        - { from: one, to: two, cable: cat6 }""";
  private static final String JOISTS = "run: east-west, from: south 16 in";

  private static Plan over(String kind) {
    Plan p =
        WrittenHouse.of(TwoStoreys.with(JOISTS, JOISTS + kind, DESK, POINTS))
            .plan("outside", "surface");
    assertEquals(List.of(), p.unrouted());
    return p;
  }

  private static List<String> kinds(Plan p) {
    return p.holes().stream().map(Plan.PlannedHole::kind).sorted().toList();
  }

  @Test
  @Feature("floorboards lifted")
  void fromLiftedBoardsTheJoistIsBoredWithoutAPatch() {
    assertEquals(1, over("").totals().patches());
    Plan lifted = over(", boards: yes");
    assertEquals(0, lifted.totals().patches());
    assertEquals(List.of("joist"), kinds(lifted));
    assertTrue(lifted.holes().get(0).method().contains("lifted boards"), lifted.holes()::toString);
  }

  @Test
  @Feature("I-joists")
  void theWebOfAnIJoistTakesWhatItsSawnTimberDoesNot() {
    // R502.8.1 keeps 2 in off both edges: 125 - 2 x 50.8 = 23.4 mm, and six cat6 take
    // sqrt(6 x 37.2 / 0.40) = 23.6, so a bit of 25. Sawn, all six go round by the outer wall above.
    assertEquals(List.of(), joists("50x125", 6));
    // C1-11: the web between flanges of 38.1 mm less 3.175 each, 125 - 82.55 = 42.45, and at most
    // the knockout of 38.1: one hole of 25.
    assertEquals(List.of(25), joists("50x125, kind: i-joist", 6));
    // 100 mm: 17.45 of web. Two cables take 16 mm, three take 19.
    assertEquals(List.of(16), joists("50x100, kind: i-joist", 2));
    assertEquals(List.of(), joists("50x100, kind: i-joist", 3));
  }

  /** The bits of the holes through the joist between the points, for so many cables. */
  private static List<Integer> joists(String made, int cables) {
    StringBuilder wanted = new StringBuilder(POINTS.substring(0, POINTS.indexOf("  - { from")));
    for (int i = 0; i < cables; i++) {
      wanted
          .append("    - { from: one, to: two, cable: cat6, name: link ")
          .append(i)
          .append(" }\n");
    }
    String floor = "joists: 2x10, every: 16 in, " + JOISTS;
    Plan p =
        WrittenHouse.of(
                TwoStoreys.with(floor, floor.replace("2x10", made), DESK, wanted.toString()))
            .plan("outside", "surface");
    assertEquals(List.of(), p.unrouted());
    return p.holes().stream()
        .filter(h -> h.kind().equals("joist"))
        .map(Plan.PlannedHole::diameterMm)
        .toList();
  }

  @Test
  @Feature("open-web joists")
  void anOpenWebIsNotBoredSoTheWayIsByTheWall() {
    // Its webs are no wood to bore, and where they stand nobody knows: no way across is offered.
    Plan p = over(", kind: open-web");
    assertFalse(kinds(p).contains("joist"), kinds(p)::toString);
    assertTrue(p.totals().minutes() > over("").totals().minutes());
  }

  private static final String THREE =
      """
      house: Three Rooms
      place: us
      built: 1990
      outer-walls: { studs: 2x4, every: 16 in }
      inner-walls: { studs: 2x4, every: 16 in }
      levels: { main: { ceiling-height: 2.5 m, floor: FLOOR } }
      rooms:
        store: { level: main, size: 3 m x 4 m, plain: yes }
        den: { level: main, size: 3 m x 4 m, east-of: store, align: south }
        study: { level: main, size: 3 m x 4 m, east-of: den, align: south }
      cabinet: { in: store, wall: west, from: south 2.4 m, height: 1 m }
      outlets:
        - { name: desk, in: study, wall: west, from: south 2.4 m, height: 400 mm, cables: [cat6] }
      """;

  private static Plan overCrawlspace(String clearance) {
    String floor =
        "{ joists: 2x10, every: 16 in, run: east-west, over: { crawlspace: { clearance: CLEAR, access: { floor-hatch: { in: store, at: [west 1 m, south 2 m], size: 24 in x 24 in } } } } }";
    return WrittenHouse.of(THREE.replace("FLOOR", floor.replace("CLEAR", clearance)))
        .plan("outside", "surface");
  }

  @Test
  @Feature("crawlspace")
  void underTheFloorWhereABodyFits() {
    Plan p = overCrawlspace("600 mm");
    assertEquals(List.of("bottom plate", "floor"), kinds(p));
    assertEquals(List.of(), p.unrouted());
    // UnderFloors: a body needs 457 mm (18 in) under the joists
    assertEquals(1, overCrawlspace("300 mm").unrouted().size());
  }

  private static Plan underShed(String low) {
    String roof =
        "roof:\n  - { over: main, shape: shed, low-side: LOW, pitch: 4/12, frame: rafters, chord: 2x6, every: 24 in, insulation: none, hatch: { in: den, at: [west 1 m, south 2 m], size: 24 in x 30 in } }\n";
    return WrittenHouse.of(THREE.replace("FLOOR", "slab") + roof.replace("LOW", low))
        .plan("outside", "surface");
  }

  private static long holeX(Plan p) {
    return p.holes().stream()
        .filter(h -> h.kind().equals("ceiling board"))
        .mapToLong(h -> h.at().x() / 1_000_000)
        .findFirst()
        .orElseThrow();
  }

  @Test
  @Feature("shed roof")
  void underItsLowSideNobodyReaches() {
    // High over the store: straight up from the wall of the cabinet, 60 mm off it.
    assertEquals(60, holeX(underShed("east")));
    // Low over it: 6.35 + x 4/12 - 139.7 of chord is a body's 600 mm at 2200 mm from the outer
    // face, an arm's 600 less is 1600, less 101.6 of wall 1498.4 from the room's face: the middle
    // of the store's side, at 1500 mm, is the first of its places that is reached.
    assertEquals(1500, holeX(underShed("west")));
  }
}
