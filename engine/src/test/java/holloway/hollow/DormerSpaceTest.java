package holloway.hollow;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holloway.geometry.Interval;
import holloway.geometry.Polygon2;
import holloway.pipeline.WrittenHouse;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A dormer just as high as a body needs is one with the attic behind it. */
class DormerSpaceTest {
  private static final String HOUSE =
      """
      house: Just High Enough
      place: uk
      built: 1898
      outer-walls: { kind: masonry, thickness: %2$s }
      levels: { ground: { floor: slab, ceiling-height: 2300 mm } }
      rooms: { loft room: { level: ground, size: 9060 mm x 4250 mm } }
      roof:
        - { name: main, over: ground, shape: gable, ridge: north-south, pitch: 8/12, eaves: 300 mm,
            frame: rafters, every: 16 in, insulation: none,
            hatch: { in: loft room, at: [west 4 m, south 1 m], size: 600 mm x 700 mm },
            dormers: [{ side: %1$s, shape: gable, from: south 900 mm, width: 1500 mm, back: 0 mm, height: 600 mm }] }
      cabinet: { in: loft room, wall: south, from: west 1 m, height: 1.2 m }
      outlets:
        - { name: desk, in: loft room, wall: north, from: west 5 m, height: 400 mm, cables: [cat6] }
      """;

  /** An arm reaches to the front of the dormer, which stands in the face of the wall. */
  @ParameterizedTest
  @CsvSource({"west, 260 mm", "east, 260 mm", "west, 245 mm", "east, 245 mm"})
  void theAtticReachesIntoIt(String side, String thick) {
    WrittenHouse h = WrittenHouse.of(HOUSE.formatted(side, thick));
    Polygon2 area =
        h.hollows().hollows().stream()
            .filter(x -> x.id().equals("attic/main"))
            .findFirst()
            .orElseThrow()
            .area()
            .orElseThrow();
    Interval roof = h.framed().attics().get(0).outline().xRange();
    long off =
        side.equals("west") ? area.xRange().lo() - roof.lo() : roof.hi() - area.xRange().hi();
    assertEquals(0, off);
  }
}
