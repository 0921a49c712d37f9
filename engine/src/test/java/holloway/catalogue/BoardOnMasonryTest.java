package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.hollow.Hollow;
import holloway.pipeline.Minutes;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import holloway.survey.Wall;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Board in front of masonry, on dabs or on battens, leaves a void for a drop; a cavity never. */
@Feature("dabbed board")
class BoardOnMasonryTest {
  /** A television point over the cabinet, both on the wall between the rooms. */
  private static String house(String kind, String height) {
    return """
        house: Board Toy
        place: uk
        built: 1985
        inner-walls: { kind: KIND, thickness: 155 mm, every: 600 mm }
        outer-walls: { kind: KIND, thickness: 330 mm, every: 600 mm }
        levels: { ground: { floor: slab, ceiling-height: 2.4 m } }
        rooms:
          south room: { level: ground, size: 5 m x 4 m, finish: board }
          north room: { level: ground, size: 5 m x 4 m, finish: board, north-of: south room, align: west }
        walls:
          - { between: [south room, north room], name: middle }
        cabinet: { in: south room, wall: north, from: west 2 m, height: 450 mm }
        outlets:
          - { name: screen, in: south room, wall: north, from: west 2 m, height: HEIGHT, cables: [cat6] }
        """
        .replace("KIND", kind)
        .replace("HEIGHT", height);
  }

  private static Plan plan(String text) {
    return WrittenHouse.of(text).plan("surface", "outside");
  }

  private static List<String> unrouted(String text) {
    return plan(text).unrouted().stream().map(Plan.Unrouted::id).toList();
  }

  @Test
  void aShortDropBehindDabbedBoard() {
    Plan p = plan(house("dabbed", "1.2 m"));
    assertEquals(List.of(), p.unrouted());
    // Board 12.7 and void 15 are less than a box of 35: both are sunk into the block, 20 each.
    // 750 mm down the void: 5 + 0.75 x 1.2.
    Minutes.total(p, 20 + 20 + 5 + 0.9);
    assertEquals(List.of("screen/cat6-1"), unrouted(house("masonry", "1.2 m")));
  }

  @Test
  void nobodyKnowsWhereTheDabsAreSoALongDropIsNone() {
    assertEquals(List.of("screen/cat6-1"), unrouted(house("dabbed", "1.5 m")));
  }

  @Test
  @Feature("furred masonry")
  void betweenBattensItGoesFurther() {
    // 25 mm of batten and the board hold a box: 10 each; 1.5 m: 5 + 1.8.
    Minutes.total(plan(house("furred", "1950 mm")), 10 + 10 + 5 + 1.8);
  }

  /** Battens every 600 mm: the box moves off the one that stands behind it, as it would a stud. */
  @Test
  @Feature("furred masonry")
  void aBoxMovesOffABatten() {
    for (int west = 1700; west <= 2300; west += 20) {
      String text = house("furred", "1950 mm").replace("west 2 m", "west " + west + " mm");
      Plan p = plan(text);
      assertEquals(List.of(), p.unrouted(), "at " + west);
      Minutes.total(p, 10 + 10 + 5 + 1.8);
    }
  }

  /**
   * Below a window nothing is known to be open behind the board: the box is sunk in the stone there
   * too, since 12.7 mm of board and 25 mm of batten are less than a box of 45.
   */
  @Test
  @Feature("furred masonry")
  void aBoxBelowAWindowIsSunk() {
    String text =
        house("furred", "400 mm")
            .replace("screen, in: south room, wall: north", "screen, in: south room, wall: south")
            .replace("cables: [cat6]", "cables: [cat6], box-depth: 45 mm")
            .replace(
                "cabinet:",
                """
                openings:
                  - { window, side: south room south, from: west 1.4 m, width: 1.2 m, sill: 900 mm, head: 2 m }
                cabinet:""");
    Plan p = WrittenHouse.of(text).plan("outside");
    assertEquals(List.of(), p.unrouted());
    List<Plan.PlannedWork> cut =
        p.works().stream().filter(w -> w.id().equals("screen/cut-out")).toList();
    assertEquals(20, cut.get(0).minutes());
  }

  @Test
  void aMeasuredVoidHoldsABox() {
    // The board's 12.7 and 30 mm behind it are more than a box of 35: no block is cut, 10 each.
    String deep =
        house("dabbed", "1.2 m")
            .replace("kind: dabbed,", "kind: dabbed, void: 30 mm,")
            .replace("155 mm", "200 mm");
    Minutes.total(plan(deep), 10 + 10 + 5 + 0.9);
    Wall middle =
        WrittenHouse.of(deep).placed().walls().stream()
            .filter(w -> w.id().equals("middle"))
            .findFirst()
            .orElseThrow();
    assertEquals(42_700_000, middle.core().lo());
    // 9 mm behind the board let 6.1 mm of cable through, 5 mm do not.
    String thin = deep.replace("void: 30 mm", "void: 5 mm");
    assertEquals(List.of("screen/cat6-1"), unrouted(thin));
    assertEquals(List.of(), unrouted(deep.replace("void: 30 mm", "void: 9 mm")));
  }

  @Test
  void fromBehindTheSkirtingUpTheVoid() {
    String along =
        house("dabbed", "450 mm")
            .replace(
                "name: screen, in: south room, wall: north, from: west 2 m",
                "name: screen, in: south room, wall: north, from: west 4 m");
    assertEquals(List.of("screen/cat6-1"), unrouted(along));
    Plan p = plan(along + "hollows: [{ skirting: south room, sides: [north] }]\n");
    // Two boxes; skirting 15 + 5 m at 7; two boards at 7; up 388 mm and 7.5 in, within an arm's
    // length, at 1.2; 2 m behind the skirting with 2 x (7.5 + 12) at 1.
    Minutes.total(p, 40 + 15 + 35 + 14 + 2 * 1.2 * 0.3955 + 2.039);
  }

  @Test
  @Feature("cavity wall")
  void theCavityIsNoHollow() {
    for (String kind : List.of("masonry", "dabbed", "furred")) {
      WrittenHouse house = WrittenHouse.of(house(kind, "1.2 m"));
      for (Wall w : house.placed().walls()) {
        for (Hollow h : house.hollows().hollows()) {
          boolean inCore =
              h.owner().equals(w.id())
                  && h.clear().y0() < w.core().hi()
                  && h.clear().y1() > w.core().lo();
          assertTrue(!inCore, () -> h.id() + " lies in the masonry of " + w.id());
        }
      }
    }
  }

  @Test
  void theRefereeKnowsTheVoidAndItsReach() {
    WrittenHouse house = WrittenHouse.of(house("dabbed", "1.2 m"));
    Plan p = house.plan("surface", "outside");
    assertEquals("[]", Spoiled.refused(p, house));
    String none = Spoiled.refused(p, WrittenHouse.of(house("masonry", "1.2 m")));
    assertTrue(none.contains("which the house does not have"), none);
  }
}
