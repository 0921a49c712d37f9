package holloway.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.pipeline.WrittenHouse;
import holloway.units.UnitSystem;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** A floor plan is drawn in the house's own frame and shows where the site's north lies. */
class TurnedDrawingTest {
  private static final String HOUSE =
      """
      house: One Room
      place: us
      built: 1990
      turned: 30 deg counter-clockwise
      levels: { main: { ceiling-height: 2.5 m, floor: slab } }
      rooms:
        hall: { level: main, size: 6 m x 4 m, plain: yes }
      cabinet: { in: hall, wall: south, from: west 3 m, height: 1 m }
      outlets:
        - { name: desk, in: hall, wall: north, from: west 3 m, height: 1 m, cables: [cat6] }
      """;

  private static String svg(String text) {
    WrittenHouse h = WrittenHouse.of(text);
    return FloorDrawing.level(
        h.placed(), h.request(), h.placed().levels().get(0), UnitSystem.METRIC);
  }

  private static List<double[]> arrow(String svg, String kind) {
    Matcher m =
        Pattern.compile("<polygon class=\"" + kind + "\"[^>]*points=\"([^\"]*)\"").matcher(svg);
    assertTrue(m.find(), kind);
    return Arrays.stream(m.group(1).split(" "))
        .map(p -> Arrays.stream(p.split(",")).mapToDouble(Double::parseDouble).toArray())
        .toList();
  }

  @Test
  void theSitesNorthIsClockwiseOfAHouseTurnedTheOtherWay() {
    List<double[]> own = arrow(svg(HOUSE), "north");
    List<double[]> site = arrow(svg(HOUSE), "north site");
    // From the notch to the tip: 400 mm up; 30 degrees clockwise of it 200 right and 346.4 up.
    assertEquals(0, own.get(0)[0] - own.get(2)[0], 0.11);
    assertEquals(-400, own.get(0)[1] - own.get(2)[1], 0.11);
    assertEquals(200, site.get(0)[0] - site.get(2)[0], 0.11);
    assertEquals(-346.4, site.get(0)[1] - site.get(2)[1], 0.11);
    assertTrue(svg(HOUSE).replaceAll("<[^>]*>|\\s+", " ").contains("turned 30 degrees"));
  }

  @Test
  void aHouseThatStandsSquareHasOneNorth() {
    String square = svg(HOUSE.replace("turned: 30 deg counter-clockwise\n", ""));
    assertFalse(square.contains("class=\"north site\""));
    assertFalse(square.contains("turned"));
  }
}
