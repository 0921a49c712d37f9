package holloway.pipeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.plan.Plan;
import holloway.support.Chain;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What check HOUSE says of a porch that does not go with the wall behind it. */
class PorchNotesTest {
  private static final String HOUSE =
      """
      house: Porch House
      place: us
      built: 1990
      levels:
        main: { ceiling-height: 8 ft, floor: slab }
        upper: { above: main, ceiling-height: 8 ft, floor: { joists: 2x10, every: 16 in, run: north-south } }
      rooms:
        hall: { level: main, size: 6 m x 5 m }
        loft: { level: upper, size: 6 m x 5 m, above: hall, align: south-west }
      openings:
        - { window, side: loft south, from: west 2 m, width: 1 m, sill: 3 ft }
      porches:
        - { porch: front, side: hall south, from: west 1 m, length: 4 m, out: 2 m, height: HIGH, ceiling: boarded, roof: shed, pitch: PITCH }
      cabinet: { in: hall, wall: west, from: south 2 m, height: 1.5 m }
      outlets:
        - { name: ap, under: front, from: west 2 m, out: 300 mm, cables: [cat6] }
      """;

  private static List<String> notes(String high, String pitch) {
    Chain c = Chain.of(HOUSE.replace("HIGH", high).replace("PITCH", pitch));
    return PorchNotes.of(c.placed()).stream().map(Plan.FindingLine::text).toList();
  }

  @Test
  void aRoofThatMeetsAWindowIsTold() {
    // ceiling 2150, 12.7 of board, 139.7 of joists, 2 m at 3/12 = 500: 2802; at 9/12 1500: 3802.
    // The window above begins 8 ft + the floor + 3 ft: 2438 + about 270 + 914 = 3622 over it.
    assertEquals(List.of(), notes("2150 mm", "3/12"));
    List<String> steep = notes("2150 mm", "9/12");
    assertEquals(1, steep.size());
    assertTrue(
        steep.get(0).contains("would meet the wall where the opening of line 11"), steep::toString);
  }

  @Test
  void joistsBeforePlatesAreTold() {
    // the middle is 82.5 over 2290: 2372.5 lies before the plates, 2362 to 2438; 2550 before joists
    assertTrue(notes("2290 mm", "1/12").get(0).contains("before plates or above the wall"));
    assertEquals(List.of(), notes("2500 mm", "1/12"));
  }
}
