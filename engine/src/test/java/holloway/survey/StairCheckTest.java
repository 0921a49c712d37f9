package holloway.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import holloway.support.Chain;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Stairs that lead nowhere are told before anything is planned. */
class StairCheckTest {
  private static final String TEXT =
      """
      house: Toy House
      place: us
      built: 1994
      levels:
        ground: { floor: slab }
        upper: { above: ground, floor: { joists: 2x10, run: east-west } }
      rooms:
        hall: { level: ground, size: 4 m x 6 m }
        den: { level: ground, size: 4 m x 6 m, east-of: hall, align: south }
        loft: { level: upper, size: 4 m x 6 m, above: hall, align: south-west }
      stairs:
        - { stair: back, in: WHERE, from: [west 1 m, south 1 m], size: 1 m x 3 m, climbs: north }
      cabinet: { in: hall, wall: west, from: south 1 m, height: 1 m }
      outlets:
        - { name: desk, in: hall, wall: west, from: south 2 m, height: 1 m, cables: [cat6] }
      """;

  private static List<String> told(String where) {
    var house = Chain.read(TEXT.replace("WHERE", where), "").house();
    return assertThrows(SurveyException.class, () -> Survey.of(house)).problems().stream()
        .map(SurveyException.Problem::text)
        .toList();
  }

  @Test
  void noLevelAbove() {
    assertEquals(
        List.of("stair back starts in loft, and no level lies over level upper"), told("loft"));
  }

  @Test
  void noFloorAbove() {
    assertEquals(List.of("stair back comes up where level upper has no room"), told("den"));
  }
}
