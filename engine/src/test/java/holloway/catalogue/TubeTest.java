package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.pipeline.Minutes;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import org.junit.jupiter.api.Test;

/** A tube is drawn through from one place where a hand has the cable to the next. */
@Feature("conduit with bends, pull boxes, and cables in it")
class TubeTest {
  private static final String HOUSE =
      """
      house: Tube Toy
      place: us
      built: 1994
      inner-walls: { studs: 2x4, every: 16 in, fill: foam }
      outer-walls: { studs: 2x4, every: 16 in }
      levels: { ground: { floor: slab, ceiling-height: 8 ft } }
      rooms:
        store: { level: ground, size: 8 ft x 12 ft, plain: yes }
        hall: { level: ground, size: 6 ft x 12 ft, east-of: store, align: south }
        lounge: { level: ground, size: 12 ft x 12 ft, east-of: hall, align: south, plain: yes }
      hollows:
        - conduit: old tube
          from: { in: store, wall: east, from: south 6 ft, height: 5 ft }
          to: { in: lounge, wall: east, from: south 6 ft, height: 16 in }
          inside-diameter: 21 mm
          WAY
      wishes: { visible-metre: 60 min }
      cabinet: { in: store, wall: east, from: south 5 ft, height: 5 ft }
      outlets:
        - { name: desk, in: lounge, wall: east, from: south 5 ft, height: 16 in, cables: [cat6] }
      """;

  /** A cut-out, a foot open on each side at 2 minutes a metre, tying on 5. */
  private static final double ROUND_IT = 10 + 2 * 0.6096 + 5;

  private static String house(String way) {
    return HOUSE.replace("WAY", way);
  }

  private static Plan plan(String way) {
    return WrittenHouse.of(house(way)).plan("outside");
  }

  private static boolean goesThrough(Plan p) {
    return p.runs().get(0).steps().stream().anyMatch(s -> s.id().equals("conduit/old tube"));
  }

  @Test
  void anglesAreCountedInBegunQuarters() {
    // 90 + 45 + 30 = 165 degrees: two begun quarters at 5; 10 m at 0.8.
    Plan p = plan("length: 10 m\n    bends: [90, 45, 30]");
    assertTrue(goesThrough(p));
    Minutes.total(p, ROUND_IT + 10 * 0.8 + 2 * 5);
  }

  @Test
  void moreThanTwoQuarterTurnsAreNoWay() {
    Plan straight = plan("length: 10 m\n    bends: [90, 90]");
    assertTrue(goesThrough(straight));
    for (String way : new String[] {"bends: [90, 90, 1]", "bends: 3"}) {
      String bent = house("length: 10 m\n    " + way);
      assertTrue(!goesThrough(WrittenHouse.of(bent).plan("outside")), way);
      String why = WrittenHouse.of(bent).findRefused("conduit old tube").orElseThrow().why();
      assertTrue(why.contains("180 degrees at most"), why);
      String refused = Spoiled.refused(straight, WrittenHouse.of(bent));
      assertTrue(refused.contains("degrees in a conduit, 180 can be"), refused);
    }
  }

  @Test
  void pullBoxesPartIt() {
    // Three parts: 32 m at 0.8, four begun quarters at 5, two pull boxes at a hand-over of 8.
    String parts =
        "parts: [{ length: 12 m, bends: 2 }, { length: 8 m, bends: [45] }, { length: 12 m, bends: 1 }]";
    Plan p = plan(parts);
    assertTrue(goesThrough(p));
    Minutes.total(p, ROUND_IT + 32 * 0.8 + 4 * 5 + 2 * 8);
    Plan whole = plan("length: 32 m\n    bends: 3");
    assertTrue(!goesThrough(whole));
    String one = Spoiled.refused(p, WrittenHouse.of(house("length: 32 m\n    bends: 2")));
    assertTrue(one.contains("30 m can be"), one);
  }

  @Test
  void whatLiesInItTakesRoom() {
    // 21 mm: 441 mm2 squared; 31 % are 136.7, less 6.1 squared 99.5: one more of 37.2, not two with
    // it (40 % are 176.4, less 37.2 for 139.2, three quarters of that 105: two are 74.4).
    String cat6 = "length: 10 m\n    bends: 0\n    holds: [cat6]";
    assertTrue(goesThrough(plan(cat6)));
    // two rg6 of 7.6: 115.5 of 176.4 leave 60.9; one cat6 of 37.2 goes in; with three none
    assertTrue(goesThrough(plan(cat6.replace("[cat6]", "[rg6, rg6]"))));
    String full = cat6.replace("[cat6]", "[rg6, rg6, rg6]");
    assertTrue(!goesThrough(plan(full)));
    String refused = Spoiled.refused(plan(cat6), WrittenHouse.of(house(full)));
    assertTrue(refused.contains("holds 3 already"), refused);
    assertEquals(0, WrittenHouse.of(house(cat6)).plan("outside").totals().holes());
  }
}
