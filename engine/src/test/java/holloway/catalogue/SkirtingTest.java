package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.pipeline.Minutes;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Skirting taken off along a wall: the cable goes behind it instead of through the studs. */
@Feature("behind skirting")
class SkirtingTest {
  private static final String BARE =
      """
      house: Skirting Toy
      place: us
      built: 1994
      inner-walls: { studs: 2x4, every: 16 in }
      outer-walls: { studs: 2x4, every: 16 in }
      levels: { ground: { floor: slab, ceiling-height: 8 ft } }
      rooms:
        south room: { level: ground, size: 20 ft x 12 ft }
        north room: { level: ground, size: 20 ft x 12 ft, north-of: south room, align: west }
      walls:
        - { between: [south room, north room], name: middle, studs-from: west 16 in }
      cabinet: { in: south room, wall: north, from: west 4 ft 1 in, height: 16 in }
      outlets:
        - { name: desk, in: north room, wall: south, from: west 16 ft, height: 16 in, cables: [cat6] }
      """;
  private static final String SOUTH =
      BARE + "hollows: [{ skirting: north room, sides: [south] }]\n";
  private static final String ROUND = BARE + "hollows: [{ skirting: north room }]\n";
  private static final String DOOR =
      "openings: [{ door, between: [south room, north room], from: west 9 ft, width: 32 in }]\n";
  private static final String STRETCH = "north room/skirting/south-middle-10";

  private static Plan plan(String text) {
    return WrittenHouse.of(text).plan("surface", "outside");
  }

  @Test
  void behindTheSkirtingInsteadOfThroughEightStuds() {
    Plan p = plan(SOUTH);
    // 20 ft of it, 6.096 m at 7 min; two boards bored at 4 + 1 + 2.
    assertEquals(42.672, Minutes.work(p, STRETCH + "/off"), 1e-9);
    // Each bay: 344.4 mm down, 159.15 aside, 44.45 out to the board: 0.548 m, 5 + 0.6576.
    // Skirting: 3251.2 mm along, and in and out 7.5 + 12 each: 3.2902 m at 1 min.
    Minutes.leg(p, STRETCH, 3.2902, 3.2902);
    Minutes.total(p, 20 + 15 + 42.672 + 14 + 2 * 5.6576 + 3.2902);
    // Through the studs: 3 patches, 6 bores from them, 2 from the cut-outs; legs 24.034.
    Minutes.total(plan(BARE), 20 + 3 * 55 + 6 * 11.1 + 2 * 17.4 + 24.034);
  }

  @Test
  void roundTheRoomBecauseNothingPassesADoor() {
    assertEquals(1, plan(SOUTH + DOOR).unrouted().size());
    Plan p = plan(ROUND + DOOR);
    assertEquals(List.of(), p.unrouted());
    long corners =
        p.runs().get(0).steps().stream().filter(s -> s.id().contains("/skirting-corner/")).count();
    assertEquals(4, corners);
    assertEquals(2, p.totals().holes());
  }

  @Test
  void anotherRoomsSkirtingIsLeftAlone() {
    Plan p = plan(BARE + "hollows: [{ skirting: south room, sides: [east] }]\n");
    assertEquals(plan(BARE).totals().objective(), p.totals().objective());
  }

  @Test
  void theRefereeAsksWhoTookItOff() {
    WrittenHouse house = WrittenHouse.of(SOUTH);
    Plan p = house.plan("surface", "outside");
    assertEquals("[]", Spoiled.refused(p, house));
    String off = STRETCH + "/off";
    assertTrue(Spoiled.refused(Spoiled.without(p, off), house).contains("before '" + off + "'"));
    assertTrue(
        Spoiled.refused(Spoiled.halved(p, off), house).contains("by the effort table it is 42.67"));
    String setUp = "skirting/north room/set-up";
    assertTrue(Spoiled.refused(Spoiled.without(p, setUp), house).contains(setUp));
    String across = Spoiled.refused(p, WrittenHouse.of(SOUTH + DOOR));
    assertTrue(across.contains("across an opening of wall middle"), across);
    assertFalse(Spoiled.refused(p, house).contains("across"));
  }
}
