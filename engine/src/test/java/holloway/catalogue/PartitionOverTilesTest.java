package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.pipeline.LoweredNotesView;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * A wall between two rooms with lowered ceilings is taken to go on up to the ceiling above: it cuts
 * the void, and a cable passes it only by a bore over the tiles.
 */
@Feature("partition that cuts the void over a ceiling")
class PartitionOverTilesTest {
  static final String HOUSE =
      """
      house: Two Tiled Rooms
      place: us
      built: 1994
      inner-walls: { studs: 2x4, every: 16 in }
      outer-walls: { studs: 2x4, every: 16 in }
      levels: { ground: { floor: slab, ceiling-height: 9 ft } }
      rooms:
        store: { level: ground, size: 8 ft x 12 ft, plain: yes }
        hall: { level: ground, size: 6 ft x 12 ft, east-of: store, align: south }
        lounge: { level: ground, size: 12 ft x 12 ft, east-of: hall, align: south }
        den: { level: ground, size: 8 ft x 12 ft, east-of: lounge, align: south }
      walls:
        - { between: [hall, lounge], name: far, studs-from: south 8 in }
      hollows:
        - { dropped-ceiling: hall tiles, in: hall, drop: DROP, cover: tiles }
        - { dropped-ceiling: lounge tiles, in: lounge, drop: DROP, cover: tiles }
      cabinet: { in: store, wall: east, from: south 6 ft, height: 5 ft }
      outlets:
        - { name: desk, in: lounge, wall: east, from: south 6 ft, height: 16 in, cables: [cat6] }
      """;

  private static final Set<String> BOTH = Set.of("soffit/hall tiles", "soffit/lounge tiles");

  private static WrittenHouse house(String drop) {
    return WrittenHouse.of(HOUSE.replace("DROP", drop));
  }

  /** Out of the store, through the partition over the tiles, into the desk's bay: three holes. */
  @Test
  void theWayOverTwoCeilingsBoresTheWallBetween() {
    Plan p = house("10 in").plan("surface", "outside");
    assertEquals(List.of(), p.unrouted());
    assertEquals(3, p.totals().holes());
    var through = p.holes().stream().filter(h -> Set.copyOf(h.between()).equals(BOTH)).toList();
    assertEquals(1, through.size(), p.holes()::toString);
    // between the tiles' upper side, 9 ft less 10 in and the tile, and the ceiling at 9 ft
    long z = through.get(0).at().z();
    assertTrue(z > 2_501_900_000L && z < 2_743_200_000L, () -> "at " + z);
    assertEquals("[]", Spoiled.refused(p, house("10 in")));
  }

  /**
   * 2 in less the tile leave 38 mm over it: beside the wall's top plates, and less than the 30 mm
   * that a bore keeps off tiles and ceiling each.
   */
  @Test
  void aVoidTooLowForABoreEndsAtTheWall() {
    assertEquals(1, house("2 in").plan("surface", "outside").unrouted().size());
  }

  @Test
  void theRefereeMissesTheHole() {
    WrittenHouse house = house("10 in");
    Plan p = house.plan("surface", "outside");
    String low = Spoiled.refused(p, house("2 in"));
    assertTrue(low.contains("hall tiles") && !low.equals("[]"), low);
  }

  @Test
  void checkSaysThatTheWallIsTakenToGoOnUp() {
    List<String> said = LoweredNotesView.of(house("10 in").placed());
    assertEquals(1, said.size(), said::toString);
    assertTrue(
        said.get(0).startsWith("The wall between 'hall' and 'lounge' is taken to go on up"),
        said::toString);
  }
}
