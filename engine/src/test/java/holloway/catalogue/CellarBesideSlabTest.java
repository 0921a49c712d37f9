package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.framing.MemberKind;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A kitchen over a cellar beside a garage on a slab of its own, lower than the kitchen's floor: the
 * wall between stands on the kitchen's floor, and its plate is bored from the cellar.
 */
@Feature("cellar beside a slab")
class CellarBesideSlabTest {
  private static final String HOUSE =
      """
      house: Cellar Toy
      place: us
      built: 1994
      levels:
        cellar: { floor: slab, ceiling-height: 7 ft }
        main: { above: cellar, floor: { joists: 2x10, every: 16 in, run: RUN }, ceiling-height: 8 ft }
      rooms:
        cellar: { level: cellar, size: 12 ft x 12 ft, plain: yes, ceiling: open }
        kitchen: { level: main, size: 12 ft x 12 ft, above: cellar, align: south-west }
        garage: { level: main, size: 12 ft x 12 ft, east-of: kitchen, align: south, garage: yes, floor: slab, elevation: STEP }
      cabinet: { in: cellar, wall: west, from: south 6 ft, height: 5 ft }
      outlets:
        - { name: door opener, in: garage, wall: west, from: south 6 ft 8 in, height: 16 in, cables: [cat6] }
      """;

  private static WrittenHouse house(String run, String step) {
    return WrittenHouse.of(HOUSE.replace("RUN", run).replace("STEP", step));
  }

  @Test
  void thePlateIsBoredFromTheCellar() {
    // Joists that end on the wall; and a joist along it, 134 mm off its board.
    for (String run : List.of("east-west", "north-south")) {
      for (String step : List.of("0 in", "-1 in", "-6 in")) {
        bored(house(run, step));
      }
    }
  }

  private static void bored(WrittenHouse house) {
    Plan p = house.plan("surface", "outside");
    assertEquals(List.of(), p.unrouted());
    assertEquals(List.of("bottom plate"), p.holes().stream().map(h -> h.kind()).toList());
    assertTrue(p.holes().get(0).id().startsWith("main/garage-kitchen/"));
    assertTrue(p.holes().get(0).method().contains("cellar"), p.holes().get(0)::method);
    assertEquals("[]", Spoiled.refused(p, house));
  }

  /** The joists end under the wall between, also where an outer wall runs on along the garage. */
  @Test
  void theJoistsEndUnderTheWallBetween() {
    WrittenHouse house = house("east-west", "-6 in");
    var deck = house.framed().decks().get(0).outline();
    long garage = house.placed().getRoom("garage").outline().xRange().lo();
    assertEquals(garage, deck.xRange().hi());
    assertEquals(4, deck.corners().size());
  }

  /** Nothing lies under the garage: its slab is on the ground, as low as its floor. */
  @Test
  void theSlabLiesAtTheFloorOfTheGarage() {
    WrittenHouse house = house("east-west", "-6 in");
    var slabs =
        house.framed().members().stream()
            .filter(m -> m.kind() == MemberKind.SLAB && m.owner().equals("garage"))
            .toList();
    assertEquals(1, slabs.size());
    assertEquals(house.placed().getRoom("garage").floorZ(), slabs.get(0).box().z1());
    assertEquals(house.placed().getRoom("garage").outline().xRange(), slabs.get(0).box().x());
  }
}
