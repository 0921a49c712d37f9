package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.check.Referee;
import holloway.geometry.Interval;
import holloway.hollow.SiteKind;
import holloway.pipeline.StoneHouse;
import holloway.pipeline.ToyAttic;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import holloway.survey.Wall;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Deep studs, two rows of studs, and stone thicker than any gap that is taken for a wall. */
@Feature("double wall")
class ThickWallTest {
  /** Cabinet and desk back to back in one bay of the middle wall. */
  private static String backToBack(String wall) {
    return ToyAttic.TEXT
        .replace("from: west 4 ft, height: 5 ft", "from: west 4 ft 8 in, height: 5 ft")
        .replace("from: west 12 ft, height: 16 in", "from: west 4 ft 8 in, height: 16 in")
        .replace("name: middle", "name: middle, " + wall);
  }

  @Test
  @Feature("deep studs")
  void deepStudsMakeOneDeepBay() {
    WrittenHouse house = WrittenHouse.of(backToBack("studs: 2x10"));
    // 9-1/4 in and two boards
    assertEquals(260_350_000, house.placed().getWall("middle").thickness());
    assertEquals(0, house.plan("surface").totals().holes());
  }

  @Test
  void twoRowsAreTwoBaysAndNothingBetween() {
    String text = backToBack("rows: 2, thickness: 10-1/4 in");
    Wall wall = WrittenHouse.of(text).placed().getWall("middle");
    // behind either board a row of 3-1/2 in, 2-1/4 in between them
    assertEquals(
        List.of(new Interval(12_700_000, 101_600_000), new Interval(158_750_000, 247_650_000)),
        wall.rows());
    Plan p = WrittenHouse.of(text).plan("surface");
    // up through the plates of one row and down through those of the other
    assertEquals(
        List.of("top plate", "top plate"), p.holes().stream().map(Plan.PlannedHole::kind).toList());
    assertTrue(p.holes().stream().anyMatch(h -> h.id().endsWith("-far")), p.holes()::toString);
    assertEquals(List.of("attic"), p.totals().zones());
  }

  @Test
  void theRefereeLetsNothingCrossBetweenTheRows() {
    Plan deep = WrittenHouse.of(backToBack("studs: 2x10")).plan("surface");
    WrittenHouse rows = WrittenHouse.of(backToBack("rows: 2, thickness: 10-1/4 in"));
    String says = Referee.check(deep, rows.hollows(), rows.request()).refusals().toString();
    assertTrue(says.contains("leaves middle/bay-"), says);
  }

  @Test
  @Feature("thick masonry")
  void stoneIsAsThickAsItIsStated() {
    String thick =
        StoneHouse.TEXT.replace("name: middle", "name: middle, kind: masonry, thickness: 650 mm");
    WrittenHouse house = WrittenHouse.of(thick);
    Wall wall =
        house.placed().walls().stream()
            .filter(w -> w.faces().stream().map(Wall.WallFace::room).distinct().count() == 2)
            .filter(w -> !w.isOuter())
            .findFirst()
            .orElseThrow();
    assertEquals(650_000_000, wall.thickness());
    var through = house.sites(SiteKind.MASONRY).stream().filter(s -> s.id().contains("/through/"));
    // 650 less 13 mm of plaster on either side
    assertTrue(
        through.allMatch(s -> s.layers().get(1).thickness() == 624_000_000L),
        house.sites(SiteKind.MASONRY)::toString);
    assertTrue(house.placed().unaccounted().isEmpty(), house.placed().unaccounted()::toString);
  }
}
