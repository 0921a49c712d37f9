package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.geometry.Interval;
import holloway.hollow.Hollow;
import holloway.hollow.HollowKind;
import holloway.pipeline.Minutes;
import holloway.pipeline.ToyAttic;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import holloway.survey.Wall;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Battens and board before a framed wall's own lining: cable passes behind the new board, along
 * level battens or up and down between upright ones, and no stud is bored.
 */
@Feature("service layer before a wall")
class ServiceLayerTest {
  /** A desk 3 m along the wall of the cabinet, at its height; no attic, a slab below. */
  private static String house(String battens, String cable) {
    return """
house: Batten Toy
place: us
built: 1994
inner-walls: { studs: 2x4, every: 16 in }
levels: { ground: { floor: slab, ceiling-height: 2.4 m } }
rooms:
  south room: { level: ground, size: 5 m x 4 m, finish: board }
  north room: { level: ground, size: 5 m x 4 m, finish: board, north-of: south room, align: west }
walls:
  - { between: [south room, north room], name: middle }
  - { side: south room north BATTENS }
cabinet: { in: south room, wall: north, from: west 1 m, height: 450 mm }
outlets:
  - { name: desk, in: south room, wall: north, from: west 4 m, height: 450 mm, cables: [CABLE] }
"""
        .replace(" BATTENS", battens)
        .replace("CABLE", cable);
  }

  private static final String LEVEL = ", battens: { depth: 38 mm, run: level, every: 600 mm }";
  private static final String UPRIGHT = ", battens: { depth: 38 mm, run: upright }";

  private static WrittenHouse written(String battens) {
    return WrittenHouse.of(house(battens, "cat6"));
  }

  private static Plan plan(WrittenHouse house) {
    return house.plan("surface", "outside");
  }

  @Test
  void alongLevelBattensInsteadOfThroughTheStuds() {
    // Studs every 16 in: seven of them stand in 3 m, each bored from a patch or a cut-out.
    assertEquals(
        7, plan(written("")).holes().stream().filter(h -> h.kind().equals("stud")).count());
    WrittenHouse house = written(LEVEL);
    Plan p = plan(house);
    assertEquals(List.of(), p.unrouted());
    assertEquals(0, p.totals().holes());
    assertEquals("[]", Spoiled.refused(p, house));
    assertTrue(plan(written("")).totals().objective() > p.totals().objective());
    // The cabinet's opening 10; board 12.7 and void 38 hold a shallow ring only: 10 + 6.
    // A fish of 3 m in the empty: 5 + 3.6. The band from 25 to 575 mm holds both boxes.
    Minutes.total(p, 10 + 16 + 5 + leg(p).m() * 1.2);
    assertEquals(3, leg(p).m(), 0.35);
  }

  private static Plan.PlanStep leg(Plan p) {
    return p.runs().get(0).steps().stream()
        .filter(s -> s.hollow().equals(java.util.Optional.of("void between level battens")))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void uprightBattensShutTheWayAlong() {
    assertTrue(plan(written(UPRIGHT)).totals().holes() >= 7);
    String screen =
        house(UPRIGHT, "cat6")
            .replace("from: west 4 m, height: 450 mm", "from: west 1 m, height: 1.5 m");
    WrittenHouse house = WrittenHouse.of(screen);
    Plan p = plan(house);
    assertEquals(List.of(), p.unrouted());
    assertEquals(0, p.totals().holes());
    assertEquals("[]", Spoiled.refused(p, house));
  }

  @Test
  void theWallIsAsThickAsItsBattens() {
    Wall wall = written(LEVEL).placed().getWall("middle");
    // Board, battens, board, studs and board: 12.7 + 38 + 12.7 + 88.9 + 12.7.
    assertEquals(165_000_000, wall.thickness());
    assertEquals(new Interval(63_400_000, 152_300_000), wall.core());
    for (Hollow h : written(LEVEL).hollows().hollows()) {
      if (h.kind() == HollowKind.SERVICE_VOID) {
        assertEquals(new Interval(12_700_000, 50_700_000), h.clear().y(), h.id());
        assertTrue(h.clear().z().length() <= 550_000_000, h.id());
      }
    }
  }

  @Test
  void aDoorPartsWhatLiesBeside() {
    String door =
        house(LEVEL, "cat6")
            + "openings: [{ door, between: [south room, north room], from: west 2 m, width: 32 in"
            + " }]\n";
    assertEquals(List.of("desk/cat6-1"), unrouted(door));
    // Over the door it runs on: from 2225 to 2360 mm, and its rough opening ends at 2095 mm.
    String high = door.replace("450 mm", "2290 mm").replace("every: 600 mm", "every: 550 mm");
    Plan p = plan(WrittenHouse.of(high));
    assertEquals(List.of(), p.unrouted());
    assertEquals(0, p.totals().holes());
  }

  private static List<String> unrouted(String text) {
    return plan(WrittenHouse.of(text)).unrouted().stream().map(Plan.Unrouted::id).toList();
  }

  @Test
  void aBoxOnALevelBattenIsToldSo() {
    // The batten lies from 425 to 475 mm.
    WrittenHouse on = written(LEVEL.replace("600 mm }", "600 mm, first: 450 mm }"));
    assertTrue(plan(on).unrouted().get(0).whyNot().toString().contains("no bay behind it"));
  }

  /** From the attic cable comes down behind the old lining, and out through it into the box. */
  @Test
  void theOldLiningIsBoredFromTheBox() {
    String text =
        ToyAttic.TEXT.replace(
            "name: middle }",
            "name: middle }\n"
                + "  - { side: north room south, battens: { depth: 2 in, run: upright } }");
    WrittenHouse house = WrittenHouse.of(text);
    Plan p = house.plan("surface");
    assertEquals(List.of(), p.unrouted());
    List<String> holes = p.holes().stream().map(Plan.PlannedHole::kind).sorted().toList();
    assertEquals(List.of("top plate", "top plate", "wall board"), holes);
    assertEquals("[]", Spoiled.refused(p, house));
    String bare = Spoiled.refused(p, WrittenHouse.of(ToyAttic.TEXT));
    assertTrue(bare.contains("which the house does not have"), bare);
  }

  @Test
  void theRefereeMeasuresTheLayerFromTheFace() {
    WrittenHouse house = written(LEVEL);
    Plan p = plan(house);
    String none = Spoiled.refused(p, written(""));
    assertTrue(none.contains("which the house does not have"), none);
    Plan fibre = plan(WrittenHouse.of(house(LEVEL, "om4")));
    assertEquals(List.of(), fibre.unrouted());
    // The head that factory-made fibre is pulled by is 13 mm.
    String thin = LEVEL.replace("38 mm", "12 mm");
    Plan not = plan(WrittenHouse.of(house(thin, "om4")));
    assertEquals(1, not.unrouted().size());
    String deep = Spoiled.refused(fibre, WrittenHouse.of(house(thin, "om4")));
    assertTrue(deep.contains("is 13.0 mm thick in a void 12.0 mm deep"), deep);
  }

  @Test
  void theRefereeMeasuresWhereItLies() {
    Plan p = plan(written(LEVEL));
    // Behind 38.1 mm of panels and board: the cable at 31.7 mm lies in them.
    String thick = LEVEL + ", lining: [panel 3/4 in, board 3/4 in]";
    String says = Spoiled.refused(p, written(thick));
    assertTrue(says.contains("lies 32 mm behind the face of middle, the void there"), says);
    String upright = Spoiled.refused(p, written(UPRIGHT));
    assertTrue(upright.contains("which the house does not have"), upright);
  }

  @Test
  void itsBattensAreAssumedUnlessFound() {
    assertTrue(assumed(LEVEL).contains("level battens taken to lie at every"), assumed(LEVEL));
    String found = assumed(LEVEL.replace("600 mm }", "600 mm, first: 100 mm }"));
    assertTrue(!found.contains("battens"), found);
  }

  private static String assumed(String battens) {
    return String.join("\n", written(battens).placed().assumed());
  }

  @Test
  void otherSidesAreAsBefore() {
    WrittenHouse house = written(LEVEL);
    assertEquals(
        List.of(0, 0),
        Stream.of("north room", "south room")
            .map(
                r ->
                    (int)
                        house.hollows().hollows().stream()
                            .filter(h -> h.kind() == HollowKind.SERVICE_VOID)
                            .filter(h -> !h.owner().equals("middle"))
                            .count())
            .toList());
  }
}
