package holloway.pipeline;

import static holloway.pipeline.Minutes.leg;
import static holloway.pipeline.Minutes.total;
import static holloway.pipeline.Minutes.work;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.plan.Plan;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A television on a filled outer wall of the ground floor, no chase, nothing outside: through the
 * joists of the floor above, fed from the garage. Work that nobody can do from a room needs the
 * ceiling opened.
 */
class TelevisionTest {
  private static final String HOUSE =
      """
      house: Television Toy
      place: us
      built: 1994
      inner-walls: { studs: 2x4, every: 16 in }
      outer-walls: { studs: 2x4, every: 16 in, fill: faced-batt }
      levels:
        ground: { floor: slab, ceiling-height: 8 ft 1 in }
        upper: { above: ground, floor: { joists: 2x10, every: 16 in, run: east-west, from: south 16 in }, ceiling-height: 8 ft }
      rooms:
        garage: { level: ground, size: 12 ft x 12 ft, garage: yes }
        living room: { level: ground, size: 11 ft 7-1/2 in x 12 ft, east-of: garage, align: south }
        office: { level: upper, size: 12 ft x 12 ft, above: garage, align: south-west }
        bedroom: { level: upper, size: 11 ft 7-1/2 in x 12 ft, east-of: office, align: south }
      walls:
        - { between: [garage, living room], name: low wall, bearing: no }
        - { side: living room east, name: outer wall }
      roof:
        - { over: upper, shape: gable, ridge: north-south, pitch: 6/12, eaves: 16 in, frame: trusses, every: 24 in,
            hatch: { in: bedroom, at: [west 2 ft, south 6 ft], size: 22 in x 30 in } }
      cabinet: { in: garage, wall: south, from: west 4 ft, height: 5 ft }
      outlets:
        - { name: television, in: living room, wall: east, from: south 6 ft, height: 4 ft, cables: [cat6] }
      """;

  @Test
  void throughTheJoistBayWithoutOpeningAnything() {
    Plan p = WrittenHouse.of(HOUSE).plan("outside");
    assertEquals(0, p.totals().patches());
    // Board over the garage: (4 + 1) x 1 + 2.
    assertEquals(7.0, work(p, "garage/ceiling/3580-1730/bore/room/garage"), 1e-9);
    // Two plies by a flexible bit from the box at 48 in: 2400.5 - 1219.2 = 1181.3 mm above it, less
    // than the 1.5 m it works over: (4 + 5) x 2.2 + 2 = 21.8.
    assertEquals(21.8, work(p, "outer wall/top-plate/1830/bore/television"), 1e-9);
    // One fish over two hollows, fed from the box: the filled bay pays the set-up, the joist bay
    // the hand-over of 8. Bay: 1181.3 down, 12 across to the middle, 12.7 along, at 2.4 a metre.
    leg(p, "outer wall/bay-1640", 1.206, 5 + 1.206 * 2.4);
    // Joist bay: half its depth 117.475 up and down, 3782.8 along, 88.9 across.
    leg(p, "upper/floor/bay-1640-40", 4.10665, 8 + 4.10665 * 1.2);
    // Garage wall to the middle of the bay: 5146.225 mm at 2.
    total(p, 10 + 7 + 21.8 + 5.146225 * 2 + 8 + 4.10665 * 1.2 + 5 + 1.206 * 2.4);
  }

  @Test
  void blockingOverABearingWallIsBoredThroughAPatch() {
    Plan p = WrittenHouse.of(HOUSE.replace("bearing: no", "bearing: yes")).plan("outside");
    // A fish passes one hand-over; blocking and plate are two, and no hand is near the blocking:
    // the ceiling beside it is opened, in the garage where it shows least.
    assertEquals(1, p.totals().patches());
    assertEquals(70.0, work(p, "upper/floor/bay-1640-40/ceiling-patch-3600"), 1e-9);
    // (4 + blocking 5) x 1.3 through a patch, and the seal
    assertEquals(
        13.7,
        work(p, "upper/floor/blocking/1640-3800/bore/upper/floor/bay-1640-40/ceiling-patch-3600"),
        1e-9);
    // holes: board, blocking, plate, and the patch counts as one too
    assertEquals(4, p.totals().holes());
    assertEquals(List.of(), p.totals().zones());
  }

  @Test
  void theAtticDoesNotHelpAGroundFloorWall() {
    WrittenHouse h = WrittenHouse.of(HOUSE);
    // Everything but the attic is forbidden: the plate under the eave over it is out of reach, and
    // the bay below is shut by its own plates.
    Plan p = h.plan("outside", "surface", "joist-bays");
    assertEquals(1, p.unrouted().size());
    // The wall over the television's, 6/12: 6.35 + (44.45 + 18) / 2 = 37.6 mm (D21, D23)
    String why =
        h.findRefused("top plate over upper/bedroom-outside/1/bay-1640").orElseThrow().why();
    assertTrue(why.startsWith("only 37 mm between plate and roof"), why);
  }
}
