package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.pipeline.Minutes;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * On a slab with nothing above, the only hidden way over a hall is what hangs below its ceiling.
 */
@Feature("lowered ceiling of tiles")
class LoweredCeilingTest {
  private static final String BARE =
      """
      house: Lowered Toy
      place: us
      built: 1994
      inner-walls: { studs: 2x4, every: 16 in }
      outer-walls: { studs: 2x4, every: 16 in }
      levels: { ground: { floor: slab, ceiling-height: 9 ft } }
      rooms:
        store: { level: ground, size: 8 ft x 12 ft, plain: yes }
        hall: { level: ground, size: 6 ft x 12 ft, east-of: store, align: south }
        lounge: { level: ground, size: 12 ft x 12 ft, east-of: hall, align: south }
      walls:
        - { between: [store, hall], name: near, studs-from: south 8 in }
        - { between: [hall, lounge], name: far, studs-from: south 8 in }
      cabinet: { in: store, wall: east, from: south 6 ft, height: 5 ft }
      outlets:
        - { name: desk, in: lounge, wall: west, from: south 11 ft 4 in, height: 16 in, cables: [cat6] }
      """;

  private static String with(String hollow) {
    return BARE + "hollows: [{ " + hollow + " }]\n";
  }

  private static final String PANEL =
      with("soffit: hall box, along: hall north, size: 12 in x 10 in, cover: panel");
  private static final String BOARD =
      with("soffit: hall box, along: hall north, size: 12 in x 10 in");
  private static final String TILES =
      with("dropped-ceiling: hall tiles, in: hall, drop: 10 in, cover: tiles");

  private static Plan plan(String text) {
    return WrittenHouse.of(text).plan("surface", "outside");
  }

  @Test
  @Feature("soffit")
  void withoutItThereIsNoHiddenWay() {
    assertEquals(List.of("desk/cat6-1"), plan(BARE).unrouted().stream().map(u -> u.id()).toList());
  }

  @Test
  @Feature("soffit")
  void throughABoxAlongTheWallWhosePanelComesOut() {
    Plan p = plan(PANEL);
    assertEquals(10, Minutes.work(p, "soffit/hall box/opened"), 1e-9);
    // Store wall 4 + 1 + 1 + 1 + 2; board into the desk's bay 4 + 1 + 2.
    assertEquals(2, p.totals().holes());
    assertEquals(0, p.totals().patches());
    // Store: 1179.2 up, 1676.7 along, 80.65 down, 12 in. Box: 25 in, 6.05 to its middle, 1778.8
    // along, 41.275 aside, 25 out; at 1.5 min. The desk is wanted on a stud and takes the nearer of
    // the bays beside it: 44.45 in, 54.375 aside, 2216.15 down.
    Minutes.leg(p, "store/surface", 2.94855, 5.8971);
    Minutes.leg(p, "soffit/hall box", 1.876125, 2.8142);
    Minutes.total(p, 10 + 10 + 9 + 7 + 5.8971 + 2.8142 + 5 + 1.2 * 2.314975);
  }

  @Test
  @Feature("soffit")
  void boardHasToBePatchedWhereTheBayIsBored() {
    Plan p = plan(BOARD);
    assertEquals(1, p.totals().patches());
    assertEquals(3, p.totals().holes());
    // Bored through the patch: (4 + 1) x 1.3 + 2; fished 1.67485 m, then an arm's length.
    Minutes.total(
        p, 10 + 70 + 9 + 8.5 + 5.8971 + 5 + 1.2 * (1.67485 + 0.201275) + 5 + 1.2 * 2.314975);
  }

  @Test
  void overTilesFromAnyWall() {
    Plan p = plan(TILES);
    assertEquals(List.of(), p.unrouted());
    assertEquals(10 + 10 + 9 + 7, p.works().stream().mapToDouble(w -> w.minutes()).sum(), 1e-9);
    Plan.PlanStep over = Minutes.leg(p, "soffit/hall tiles");
    assertEquals("lowered ceiling", over.hollow().orElseThrow());
    assertEquals(1.5 * over.m(), over.minutes().orElseThrow(), 0.001);
  }

  @Test
  void anAccessPointHangsAmongTheTiles() {
    Plan p =
        plan(
            TILES.replace(
                "in: lounge, wall: west, from: south 11 ft 4 in, height: 16 in",
                "in: hall, ceiling: [west 3 ft, south 3 ft]"));
    assertEquals(List.of(), p.unrouted());
    // 9 ft less 10 in, and the tile: 2501.9 mm over the floor.
    var steps = p.runs().get(0).steps();
    var path = steps.get(steps.size() - 1).path();
    assertEquals(2_501_900_000L, path.get(path.size() - 1).z());
  }

  @Test
  void theRefereeAsksWhoOpenedIt() {
    WrittenHouse house = WrittenHouse.of(PANEL);
    Plan p = house.plan("surface", "outside");
    String opened = "soffit/hall box/opened";
    assertEquals("[]", Spoiled.refused(p, house));
    assertTrue(
        Spoiled.refused(Spoiled.without(p, opened), house).contains("before '" + opened + "'"));
    assertTrue(Spoiled.refused(Spoiled.halved(p, opened), house).contains("it is 10.00"));
    // The same plan where the box is boarded: no hand reaches in.
    String boarded = Spoiled.refused(p, WrittenHouse.of(BOARD));
    assertTrue(boarded.contains("no hand reaches"), boarded);
  }
}
