package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.check.Referee;
import holloway.check.Spoiled;
import holloway.pipeline.Minutes;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import holloway.takeoff.CutLength;
import org.junit.jupiter.api.Test;

/** A building that stands apart, reached by a duct, a trench or a span, and by nothing else. */
@Feature("building that stands apart")
class OutdoorLinkTest {
  private static final String DUCT =
      """
      house: Yard Toy
      place: us
      built: 1994
      inner-walls: { studs: 2x4, every: 16 in, fill: foam }
      outer-walls: { studs: 2x4, every: 16 in, fill: foam }
      levels: { ground: { floor: slab, ceiling-height: 8 ft } }
      rooms:
        store: { level: ground, size: 3 m x 3 m, plain: yes }
        office: { level: ground, size: 4 m x 3 m, at: [13 m, 0 m], plain: yes }
      hollows:
        - outdoor-link: yard
          kind: duct
          there: yes
          inside-diameter: 50 mm
          from: { in: store, wall: east, from: south 1 m, height: 12 in }
          to: { in: office, wall: west, from: south 1 m, height: 12 in }
          length: 11 m
      cabinet: { in: store, wall: west, from: south 1 m, height: 5 ft }
      outlets:
        - { name: desk, in: office, wall: east, from: south 1 m, height: 16 in, cables: [cat6] }
      """;
  private static final String NEW = DUCT.replace("there: yes", "there: no");
  private static final String BURIED =
      DUCT.replace("kind: duct", "kind: buried")
          .replace("    there: yes\n", "")
          .replace("    inside-diameter: 50 mm\n", "");
  private static final String SPAN =
      BURIED.replace("kind: buried", "kind: overhead").replace("height: 12 in", "height: 9 ft");

  private static Plan plan(String text) {
    return WrittenHouse.of(text).plan();
  }

  @Test
  void aDuctThatIsThereIsTheWay() {
    Plan p = plan(DUCT);
    // Fished: set-up 5, 11 m at 0.8, two quarter turns at 5.
    Minutes.leg(p, "conduit/yard", 11, 5 + 8.8 + 10);
    // One hole through each outer wall: 4 + lining 1 + void 1 + cladding 5, sealed 2.
    assertEquals(2, p.totals().holes());
    assertEquals(26, p.holes().stream().mapToDouble(Plan.PlannedHole::minutes).sum(), 0.001);
    assertTrue(p.works().stream().noneMatch(w -> w.id().endsWith("/dug")));
    String nothing = DUCT.replaceAll("(?s)hollows:.*cabinet:", "cabinet:");
    assertEquals(1, plan(nothing).unrouted().size());
  }

  @Test
  void aDripLoopAtEachEnd() {
    Plan.PlannedRun run = plan(DUCT).runs().get(0);
    // Copper outlet 0.3, cabinet 3, and 0.3 before each of the two walls.
    assertEquals(3.9, CutLength.of(run).slackM(), 1e-9);
  }

  @Test
  void whereItStandsNeedNotBeKnown() {
    String apart = DUCT.replace("at: [13 m, 0 m]", "apart: yes");
    assertEquals(plan(DUCT).totals().objective(), plan(apart).totals().objective());
    // An L round the corner: the store's north wall, the office's west one.
    String corner =
        apart.replace(
            "in: store, wall: east, from: south 1 m", "in: store, wall: north, from: west 1 m");
    Minutes.leg(plan(corner), "conduit/yard", 11, 23.8);
  }

  @Test
  void aNewDuctIsDugOnceHoweverManyCablesItTakes() {
    Plan p = plan(NEW.replace("[cat6]", "[cat6, cat6, om4]"));
    assertEquals(3, p.runs().size());
    // 11 m at 30 minutes.
    assertEquals(330, Minutes.work(p, "conduit/yard/dug"), 0.001);
    // 10 mm: one at 6.1 mm takes 37 %, two would take 74 %, and 31 % may be.
    Plan tight = plan(NEW.replace("50 mm", "10 mm").replace("[cat6]", "[cat6, cat6]"));
    assertEquals(1, tight.unrouted().size());
  }

  @Test
  void cableLiesBareInATrench() {
    Plan p = plan(BURIED);
    Minutes.leg(p, "conduit/yard", 11, 11);
    assertEquals(330, Minutes.work(p, "conduit/yard/dug"), 0.001);
  }

  @Test
  void cableHangsFromWallToWall() {
    Plan p = plan(SPAN);
    Minutes.leg(p, "conduit/yard", 11, 44);
    assertEquals(60, Minutes.work(p, "conduit/yard/strung"), 0.001);
    assertEquals(15, Minutes.work(p, "set-up/ladder"), 0.001);
  }

  @Test
  void endsFurtherApartThanTheLinkIsLongShutIt() {
    WrittenHouse far = WrittenHouse.of(DUCT.replace("at: [13 m", "at: [15 m"));
    assertTrue(
        far.findRefused("link yard").orElseThrow().why().contains("further than its 11.0 m"));
    WrittenHouse turns =
        WrittenHouse.of(DUCT.replace("length: 11 m", "length: 11 m\n    bends: 3"));
    assertTrue(turns.findRefused("link yard").orElseThrow().why().contains("270 degrees of turns"));
  }

  /** A6-12: 30 m from hand to hand; with a pull box half-way 40 m can be drawn. */
  @Test
  void aPullBoxHalfWayAndWhatLiesInIt() {
    String far = DUCT.replace("length: 11 m", "length: 40 m\n    bends: 1");
    assertEquals(1, WrittenHouse.of(far).plan().unrouted().size());
    String boxed =
        DUCT.replace(
            "length: 11 m", "parts: [{ length: 20 m, bends: 1 }, { length: 20 m, bends: [45] }]");
    Plan p = plan(boxed);
    // Fished twice: set-up 5, 40 m at 0.8, two begun quarter turns at 5, one hand-over.
    assertTrue(p.unrouted().isEmpty());
    assertEquals(40, Minutes.leg(p, "conduit/yard").m(), 0.001);
    // 20 mm with two cat6 in it: three would take 3 x 6.1 x 6.1 of 400, 28 % of the 40 that may be;
    // with four the fifth is over
    String small = DUCT.replace("50 mm", "20 mm");
    String holds = small.replace("length: 11 m", "length: 11 m\n    holds: [%s]");
    assertTrue(plan(holds.formatted("cat6")).unrouted().isEmpty());
    assertEquals(1, plan(holds.formatted("cat6, cat6, cat6, cat6")).unrouted().size());
  }

  private static boolean finds(Plan p, String rule) {
    return p.findings().stream().anyMatch(f -> f.rule().equals(rule));
  }

  @Test
  void copperAndItsJacketAreSpokenOf() {
    Plan copper = plan(DUCT);
    assertTrue(finds(copper, "copper-between-buildings"));
    assertTrue(finds(copper, "cable-between-buildings"));
    assertTrue(finds(copper, "outer-wall-hole"));
    Plan glass = plan(DUCT.replace("[cat6]", "[outdoor-fibre]"));
    assertFalse(finds(glass, "copper-between-buildings"));
    assertTrue(finds(glass, "cable-between-buildings"));
  }

  @Test
  void earthOverIt() {
    String rule = "depth-between-buildings";
    assertTrue(finds(plan(DUCT), rule)); // not said
    String deep = DUCT.replace("length: 11 m", "length: 11 m\n    depth: ");
    assertFalse(finds(plan(deep.replace("depth: ", "depth: 12 in")), rule));
    assertTrue(finds(plan(deep.replace("depth: ", "depth: 304 mm")), rule));
    String bare = BURIED.replace("length: 11 m", "length: 11 m\n    depth: 18 in");
    String says =
        plan(bare).findings().stream()
            .filter(f -> f.rule().equals(rule))
            .findFirst()
            .orElseThrow()
            .text();
    assertTrue(says.startsWith("The link yard is dug and has "), says);
    assertFalse(finds(plan(SPAN), rule));
  }

  @Test
  void theRefereeAsksForTheTrench() {
    WrittenHouse house = WrittenHouse.of(BURIED);
    Plan p = house.plan();
    Plan undug =
        Spoiled.with(
            p, p.holes(), p.works().stream().filter(w -> !w.id().endsWith("/dug")).toList());
    String says = Referee.check(undug, house.hollows(), house.request()).refusals().toString();
    assertTrue(says.contains("conduit/yard/dug"), says);
  }
}
