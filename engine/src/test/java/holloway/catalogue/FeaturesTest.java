package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.plan.Plan;
import holloway.request.Profile;
import holloway.support.Chain;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * One feature each: the smallest house in which a route exists, or no longer exists, because of it.
 */
class FeaturesTest {
  /**
   * Store with the cabinet, lounge beside it, attic over both; the desk is on the wall between
   * lounge and den.
   */
  private static final String HOUSE =
      """
      house: Feature House
      place: us
      built: 1990
      outer-walls: { studs: 2x4, every: 16 in, fill: faced-batt }
      inner-walls: { studs: 2x4, every: 16 in INNER }
      levels: { main: { ceiling-height: 8 ft, floor: slab } }
      rooms:
        store: { level: main, size: 2 m x 9 m, plain: yes }
        lounge: { level: main, size: 5 m x 9 m, east-of: store, align: south }
        den: { level: main, size: 4 m x 9 m, east-of: lounge, align: south }
      openings:
        - { door, between: [store, lounge], from: south 1 m, width: 800 mm }
        - { door, between: [lounge, den], from: south 1 m, width: 800 mm }
      roof:
        - { over: main, shape: gable, ridge: east-west, pitch: 8/12, eaves: 16 in, frame: trusses, chord: 2x4,
            every: 24 in, insulation: 10 in loose, hatch: { in: store, at: [west 1 m, south 4.5 m], size: 22 in x 30 in } }
      EXTRA
      cabinet: { in: store, wall: west, from: south 4.5 m, height: 1.5 m }
      outlets:
        - { name: desk, in: lounge, wall: east, from: south 4.5 m, height: 400 mm, cables: [CABLES] }
      WISHES
      """;

  private static Chain chain(String inner, String extra, String cables, String wishes) {
    return Chain.of(
        HOUSE
            .replace(" INNER", inner)
            .replace("EXTRA", extra)
            .replace("CABLES", cables)
            .replace("WISHES", wishes));
  }

  private static Plan hidden(Chain c) {
    Plan p = c.plan(Profile.LEAST_WORK, Set.of("outside", "surface"), r -> true);
    assertEquals(List.of(), c.refusals(p));
    return p;
  }

  @Test
  @Feature("attic")
  void anAtticDropIntoAnInnerWall() {
    Plan p = hidden(chain("", "", "cat6", ""));
    assertEquals(1, p.runs().size());
    // Ceiling board of the store, top plates over the desk.
    assertEquals(2, p.totals().holes());
    assertEquals(List.of("attic"), p.totals().zones());
  }

  @Test
  @Feature("foam in a wall")
  void foamShutsTheBay() {
    Plan p = hidden(chain(", fill: foam", "", "cat6", ""));
    assertEquals(List.of("desk/cat6-1"), p.unrouted().stream().map(Plan.Unrouted::id).toList());
  }

  @Test
  @Feature("filled bay")
  void looseFillIsFishedUpToItsLimitOnly() {
    // Plates' underside to the desk: 2438.4 + 12.7 - 76 - 400 = 1.975 m, under the 2.5 m of loose
    // fill.
    assertEquals(1, hidden(chain(", fill: loose", "", "cat6", "")).runs().size());
  }

  @Test
  @Feature("fire block")
  void aFireBlockIsBoredOrGoneRound() {
    String block =
        "obstacles: [{ fire-block, side: lounge east, from: south 4.1 m, width: 700 mm, bottom: 1.2 m, top: 1.24 m }]";
    Plan open = hidden(chain("", "", "cat6", ""));
    Plan blocked = hidden(chain("", block, "cat6", ""));
    assertTrue(blocked.totals().objective() > open.totals().objective());
  }

  @Test
  @Feature("attic left alone")
  void theAtticNeverMeansNoAttic() {
    Plan p = hidden(chain("", "", "cat6", "wishes: { attic: never }"));
    assertTrue(p.runs().isEmpty());
  }

  @Test
  @Feature("room to avoid")
  void aRoomToAvoidIsNotOpenedNorCrossed() {
    Chain c = chain("", "", "cat6", "wishes: { avoid: [lounge] }");
    assertTrue(
        c.routed().graph().nodes().stream()
            .noneMatch(n -> n.name().startsWith("lounge/surface/line")));
    assertTrue(
        c.routed().graph().works().stream().noneMatch(w -> w.name().contains("/bore/room/lounge")));
  }

  @Test
  @Feature("second bore beside the first")
  void moreCablesTakeAWiderBitThenASecondHole() {
    // E7: 3/4 in (19 mm) takes three cat6, 7/8 in (22) takes four, 1 in (25) six.
    assertEquals(19, plate(hidden(chain("", "", "cat6, cat6, cat6", ""))).diameterMm());
    assertEquals(
        25, plate(hidden(chain("", "", "cat6, cat6, cat6, cat6, cat6, cat6", ""))).diameterMm());
    String twelve = String.join(", ", java.util.Collections.nCopies(12, "cat6"));
    Plan.PlannedHole many = plate(hidden(chain("", "", twelve, "")));
    // Twelve: 12 x 37.2 / 0.40 = 33.4 mm: over the 32 mm there is room for, so a second bore beside
    // it.
    assertEquals(2, many.bores());
  }

  private static Plan.PlannedHole plate(Plan p) {
    return p.holes().stream().filter(h -> h.kind().equals("top plate")).findFirst().orElseThrow();
  }

  @Test
  @Feature("outlet with a range")
  void aRangeLetsTheOutletSitInTheBetterBay() {
    // At 4.5 m a fire block stands in the bay; from 4.5 to 6 m there are bays without.
    String block =
        "obstacles: [{ fire-block, side: lounge east, from: south 4.1 m, width: 700 mm, bottom: 1.2 m, top: 1.24 m }]";
    String ranged =
        HOUSE.replace(
            "from: south 4.5 m, height: 400 mm", "from: south 4.5 m, to: 6 m, height: 400 mm");
    Chain c =
        Chain.of(
            ranged
                .replace(" INNER", "")
                .replace("EXTRA", block)
                .replace("CABLES", "cat6")
                .replace("WISHES", ""));
    Plan p = hidden(c);
    assertEquals(2, p.totals().holes());
    assertTrue(p.holes().stream().noneMatch(h -> h.kind().equals("fire block")));
  }

  @Test
  @Feature("conduit")
  void anExistingConduitNeedsNoHole() {
    String tube =
        """
        hollows:
          - conduit: old tube
            from: { in: store, wall: west, from: south 4.8 m, height: 1.5 m }
            to: { in: lounge, wall: east, from: south 4.6 m, height: 400 mm }
            inside-diameter: 21 mm
            bends: 2
            length: 12 m
        """
            .indent(0);
    Chain c = chain("", tube, "cat6", "wishes: { attic: never, visible-metre: 1 min }");
    Plan p = c.plan(Profile.FEWEST_HOLES, Set.of(), r -> true);
    assertEquals(List.of(), c.refusals(p));
    assertEquals(0, p.totals().holes());
    assertTrue(p.runs().get(0).steps().stream().anyMatch(s -> s.id().equals("conduit/old tube")));
  }

  @Test
  @Feature("conduit with room left")
  void aConduitTakesWhatItsFillLeavesRoomFor() {
    String tube =
        """
        hollows:
          - conduit: old tube
            from: { in: store, wall: west, from: south 4.8 m, height: 1.5 m }
            to: { in: lounge, wall: east, from: south 4.6 m, height: 400 mm }
            inside-diameter: 21 mm
            bends: 2
            length: 12 m
        """
            .indent(0);
    // 21 mm: 346.4 mm2, of which 40 % is 138.5: four cables of 29.2 mm2 (116.9), not five (146.1).
    for (int cables : new int[] {4, 5}) {
      String all = String.join(", ", java.util.Collections.nCopies(cables, "cat6"));
      Chain c = chain("", tube, all, "wishes: { attic: never, visible-metre: 1 min }");
      Plan p = c.plan(Profile.FEWEST_HOLES, Set.of(), r -> true);
      long inIt =
          p.runs().stream()
              .filter(r -> r.steps().stream().anyMatch(s -> s.id().equals("conduit/old tube")))
              .count();
      assertEquals(4, inIt);
    }
  }

  @Test
  @Feature("tank in the attic")
  void anObstacleInTheAtticIsGoneRound() {
    Plan free = hidden(chain("", "", "cat6", ""));
    String tank =
        "obstacles: [{ tank, above-ceiling-of: lounge, at: [west 2.5 m, south 4.5 m], size: 1 m x 3 m, height: 1 m }]";
    Plan round = hidden(chain("", tank, "cat6", ""));
    assertTrue(round.totals().routeM() > free.totals().routeM());
  }

  @Test
  @Feature("tank in the attic")
  void aTankAcrossTheAtticCutsOffWhatLiesBehind() {
    // A wall-to-wall tank over the store's edge leaves no body's way: the desk's plates are out of
    // reach.
    String tank =
        "obstacles: [{ tank, above-ceiling-of: lounge, at: [west 1 m, south 4.5 m], size: 1 m x 9 m, height: 2 m }]";
    Chain c = chain("", tank, "cat6", "");
    Plan p = c.plan(Profile.LEAST_WORK, Set.of("outside", "surface"), r -> true);
    assertTrue(p.runs().isEmpty());
    assertTrue(
        c.routed().refused().stream().anyMatch(r -> r.why().startsWith("out of arm's reach")));
  }

  @Test
  @Feature("chimney")
  void aFlueIsNoWay() {
    String chase =
        "hollows: [{ chase: old chimney, from: main, to: attic, beside: lounge north, size: 300 mm x 300 mm, contents: [flue], known: yes }]";
    Chain c = chain("", chase, "cat6", "");
    assertFalse(c.house().hollows().stream().anyMatch(h -> h.id().startsWith("chase/")));
    assertTrue(c.routed().refused().stream().anyMatch(r -> r.why().contains("flue")));
  }
}
