package holloway.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.housefile.HouseFile;
import holloway.housefile.Reading;
import holloway.survey.Survey;
import holloway.units.UnitSystem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SortedMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Links between buildings on the floor plans, where a wrong end is seen at once. */
class YardLinksTest {
  private static final String YARD =
      """
      house: Yard Toy
      place: uk
      built: 1994
      levels:
        ground: { floor: slab, ceiling-height: 2700 mm }
        upper: { above: ground, floor: { joists: 50x200, every: 400 mm, run: east-west }, ceiling-height: 2700 mm }
      rooms:
        store: { level: ground, size: 3 m x 3 m, plain: yes }
        loft: { level: upper, above: store, align: south-west, size: 3 m x 3 m, plain: yes }
        office: { level: ground, size: 4 m x 3 m, at: [13 m, 0 m], plain: yes }
      hollows:
        - outdoor-link: yard
          kind: duct
          there: no
          depth: 450 mm
          inside-diameter: 50 mm
          from: { in: store, wall: east, from: south 1 m, height: 300 mm }
          to: { in: office, wall: west, from: south 1 m, height: 300 mm }
          length: 11 m
      cabinet: { in: store, wall: west, from: south 1 m, height: 1500 mm }
      outlets:
        - { name: desk, in: office, wall: east, from: south 1 m, height: 400 mm, cables: [cat6] }
      """;

  @TempDir Path folder;

  private SortedMap<String, String> drawn(String text) throws Exception {
    Path file = Files.writeString(folder.resolve("yard.yaml"), text);
    Reading read = HouseFile.read(file);
    assertTrue(read instanceof Reading.Sound, () -> read.toString());
    Reading.Sound sound = (Reading.Sound) read;
    return FloorDrawing.of(Survey.of(sound.house()).value(), sound.request(), UnitSystem.METRIC);
  }

  private static int count(String svg, String word) {
    return svg.split(word, -1).length - 1;
  }

  @Test
  void aDuctIsDrawnFromWallToWall() throws Exception {
    SortedMap<String, String> sheets = drawn(YARD);
    String ground = sheets.get("plan-ground.svg");
    assertEquals(2, count(ground, "class=\"link end\" data-of=\"yard\""));
    assertEquals(1, count(ground, "<line class=\"link duct\""));
    // Ends 1 m up the drawing from the rooms' south side, which is y = 0.
    assertEquals(2, count(ground.replaceAll("(?s).*<g class=\"links\">", ""), "cy=\"-1000\""));
    assertTrue(ground.contains("yard: duct, 11.000 m, 450 mm deep, to be dug"), ground);
    assertFalse(sheets.get("plan-upper.svg").contains("class=\"link "));
  }

  @Test
  void anEndOnAnotherLevelIsNamed() throws Exception {
    String up =
        YARD.replace("kind: duct", "kind: overhead")
            .replaceAll("    (there|depth|inside-diameter): .*\n", "")
            .replace("from: { in: store", "from: { in: loft")
            .replace("height: 300 mm", "height: 2500 mm");
    SortedMap<String, String> sheets = drawn(up);
    String upper = sheets.get("plan-upper.svg");
    assertTrue(upper.contains("yard: overhead, 11.000 m, to office"), upper);
    assertTrue(sheets.get("plan-ground.svg").contains("yard: overhead, 11.000 m, to loft"));
    assertEquals(1, count(upper, "<line class=\"link laid\""));
  }
}
