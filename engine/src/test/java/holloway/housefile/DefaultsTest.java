package holloway.housefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.house.Fill;
import holloway.house.House;
import holloway.house.Lining;
import holloway.house.Timber;
import holloway.house.WallSpec;
import holloway.units.Length;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is assumed by place and era; figures of trade-facts D1 to D9 and J11 to J20. */
class DefaultsTest {
  @TempDir Path dir;

  private House house(String place, String built) throws IOException {
    return new Written(dir)
        .with("place: us", "place: " + place)
        .with("built: 1994\n", built.isEmpty() ? "" : "built: " + built + "\n")
        .sound()
        .house();
  }

  @Test
  void aNewerUsHouse() throws IOException {
    House h = house("us", "1994");
    Timber outer = h.outerWalls().studs().orElseThrow().value();
    assertEquals(Length.inches(3, 2), outer.thickness());
    assertEquals(Length.inches(11, 2), outer.depth());
    assertTrue(h.outerWalls().studs().orElseThrow().isAssumed());
    assertEquals(Length.inches(7, 2), h.innerWalls().studs().orElseThrow().value().depth());
    assertEquals(Length.inches(16), h.innerWalls().every().orElseThrow().value());
    assertEquals(Optional.empty(), h.innerWalls().thickness());
    assertEquals(Fill.FACED_BATT, h.outerWalls().fill().orElseThrow().value());
    assertEquals(Fill.EMPTY, h.innerWalls().fill().orElseThrow().value());
    assertEquals(Lining.BOARD, h.getRoom("office").walls());
    assertEquals(Length.inches(97), h.getLevel("upper").ceilingHeight().value());
    assertEquals(
        Length.inches(37, 4), h.getLevel("upper").floor().joists().orElseThrow().value().depth());
    assertFalse(h.balloon());
  }

  @Test
  void anOlderUsHouse() throws IOException {
    House h = house("us", "1905");
    Timber studs = h.outerWalls().studs().orElseThrow().value();
    assertEquals(Length.inches(2), studs.thickness());
    assertEquals(Length.inches(4), studs.depth());
    assertEquals(Fill.UNKNOWN, h.outerWalls().fill().orElseThrow().value());
    assertEquals(Lining.LATH_AND_PLASTER, h.getRoom("office").ceiling());
    assertEquals(Length.feet(9), h.getLevel("upper").ceilingHeight().value());
    Timber between = house("us", "1955").outerWalls().studs().orElseThrow().value();
    assertEquals(Length.inches(29, 8), between.depth());
  }

  @Test
  void aUkHouse() throws IOException {
    House h = house("uk", "1965");
    assertEquals(WallSpec.Kind.MASONRY, h.outerWalls().kind().orElseThrow());
    assertEquals(Length.mm(300), h.outerWalls().thickness().orElseThrow().value());
    assertEquals(Length.mm(63), h.innerWalls().studs().orElseThrow().value().depth());
    assertEquals(Length.mm(400), h.innerWalls().every().orElseThrow().value());
    assertEquals(Length.mm(2400), h.getLevel("upper").ceilingHeight().value());
    assertTrue(h.getLevel("upper").floor().boards());
    assertFalse(house("uk", "1985").getLevel("upper").floor().boards());
    assertEquals(Length.mm(460), house("uk", "1900").innerWalls().every().orElseThrow().value());
  }

  @Test
  void aYearNobodyGaveIsAssumedAndOldEnoughForEveryCaution() throws IOException {
    House h = house("us", "");
    assertTrue(h.built().isAssumed());
    assertTrue(h.built().value() < 1978);
  }

  @Test
  void whatIsSaidWins() throws IOException {
    House h =
        new Written(dir)
            .plus("outer-walls: { studs: 38x140, every: 24 in, fill: foam, thickness: 7 in }\n")
            .plus("inner-walls: { kind: masonry }\n")
            .sound()
            .house();
    assertEquals("38x140", h.outerWalls().studs().orElseThrow().value().name());
    assertFalse(h.outerWalls().studs().orElseThrow().isAssumed());
    assertEquals(Length.inches(24), h.outerWalls().every().orElseThrow().value());
    assertEquals(Fill.FOAM, h.outerWalls().fill().orElseThrow().value());
    assertEquals(Length.inches(7), h.outerWalls().thickness().orElseThrow().value());
    assertEquals(Length.mm(125), h.innerWalls().thickness().orElseThrow().value());
  }

  @Test
  void metricTimber() throws IOException {
    for (String good : new String[] {"47x170", "47 x 170 mm", "170x47"}) {
      House h = new Written(dir).with("joists: 2x10", "joists: " + good).sound().house();
      Timber t = h.getLevel("upper").floor().joists().orElseThrow().value();
      assertEquals(Length.mm(47), t.thickness());
      assertEquals(Length.mm(170), t.depth());
      assertEquals("47x170", t.name());
    }
    new Written(dir).with("joists: 2x10", "joists: 10x12").assertProblemAt("10x12", "2x4 to 2x12");
  }
}
