package holloway.housefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.house.Assumption;
import holloway.house.House;
import holloway.house.Lining;
import holloway.house.Side;
import holloway.house.WallSpec;
import holloway.survey.Placed;
import holloway.survey.Survey;
import holloway.survey.Wall;
import holloway.units.Length;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is usual is said for the house, a level or one wall; what is not said is listed. */
class UsualTest {
  @TempDir Path dir;

  private Written written() throws IOException {
    return new Written(dir);
  }

  private static List<String> taken(House h, String what) {
    return h.assumed().stream().filter(a -> a.what().equals(what)).map(Assumption::of).toList();
  }

  @Test
  void whatWasTakenIsKept() throws IOException {
    House h = written().sound().house();
    assertEquals(List.of("garage", "kitchen", "office"), taken(h, "finish"));
    assertEquals(List.of("garage", "kitchen", "office"), taken(h, "ceiling"));
    assertEquals(List.of("level upper"), taken(h, "ceiling-height"));
    assertEquals(List.of(), taken(h, "joists"));
    assertEquals(List.of("level upper"), taken(h, "joist-spacing"));
    assertEquals(List.of("window in office east"), taken(h, "sill"));
    assertEquals(List.of("boxes seen"), taken(h, "outlet-height"));
  }

  @Test
  void theLevelGoesBeforeTheHouse() throws IOException {
    House h =
        written()
            .with("levels:\n", "usual: { finish: plaster, ceiling-height: 9 ft }\nlevels:\n")
            .with("ceiling-height: 8 ft }", "ceiling-height: 8 ft, usual: { finish: panel } }")
            .sound()
            .house();
    assertEquals(Lining.PANEL, h.getRoom("kitchen").walls());
    assertEquals(Lining.PLASTER, h.getRoom("office").walls());
    assertEquals(Length.feet(9), h.getLevel("upper").ceilingHeight().value());
    assertFalse(h.getLevel("upper").ceilingHeight().isAssumed());
    assertEquals(List.of(), taken(h, "finish"));
  }

  /** In Europe walls are taken to be of masonry; whose studs are said is framed all the same. */
  @Test
  void studsSayThatAWallIsFramed() throws IOException {
    Written house =
        written()
            .with("place: us", "place: eu")
            .with("levels:\n", "inner-walls: { studs: 60x100 }\nlevels:\n")
            .with("walls:\n", "walls:\n  - { side: kitchen east, studs: 60x120 }\n");
    for (Wall w : Survey.of(house.sound().house()).value().walls()) {
      boolean kitchenEast =
          w.faces().stream()
              .anyMatch(f -> f.room().equals("kitchen") && f.roomSide().equals(Side.EAST));
      assertEquals(!w.isOuter() || kitchenEast, w.isFramed(), w::id);
    }
  }

  /** House, then level, then the one wall: each goes before what stands above it. */
  @Test
  void wallsOfALevelAndOneWall() throws IOException {
    House h =
        written()
            .with("levels:\n", "outer-walls: { every: 24 in }\nlevels:\n")
            .with("ceiling-height: 8 ft }", "ceiling-height: 8 ft, outer-walls: { every: 12 in } }")
            .with("walls:\n", "walls:\n  - { side: kitchen east, every: 20 in }\n")
            .sound()
            .house();
    Placed p = Survey.of(h).value();
    Wall here = wallOn(p, "kitchen", "east");
    assertEquals(Length.inches(20), here.every().value());
    Wall level = wallOn(p, "kitchen", "south");
    assertEquals(Length.inches(12), level.every().value());
    Wall house = wallOn(p, "office", "south");
    assertEquals(Length.inches(24), house.every().value());
  }

  private static Wall wallOn(Placed p, String room, String side) {
    return p.walls().stream()
        .filter(
            w ->
                w.faces().stream()
                    .anyMatch(f -> f.room().equals(room) && f.roomSide().word().equals(side)))
        .findFirst()
        .orElseThrow();
  }

  /** A house of masonry has no bay in any wall until somebody says that a wall is framed. */
  @Test
  void europeIsMasonryUntilAWallIsSaid() throws IOException {
    House h = written().with("place: us", "place: eu").with("studs: 2x6, ", "").sound().house();
    assertEquals(WallSpec.Kind.MASONRY, h.innerWalls().kind().orElseThrow());
    Placed p = Survey.of(h).value();
    assertTrue(p.walls().stream().noneMatch(Wall::isFramed));
    assertTrue(p.defaults().stream().noneMatch(a -> a.what().endsWith("studs")), p.toString());
    assertTrue(p.assumed().stream().anyMatch(a -> a.contains("outer masonry 400 mm")));
    House framed =
        written()
            .with("place: us", "place: eu")
            .with("studs: 2x6, ", "kind: framed, studs: 60x100, ")
            .sound()
            .house();
    assertEquals(1, Survey.of(framed).value().walls().stream().filter(Wall::isFramed).count());
  }

  /** UK partitions have one head plate (from memory), the outer walls of a framed house two. */
  @Test
  void plates() throws IOException {
    House uk = written().with("place: us", "place: uk").sound().house();
    assertEquals(true, uk.innerWalls().singleTopPlate().orElseThrow());
    assertEquals(false, uk.outerWalls().singleTopPlate().orElseThrow());
    House said =
        written()
            .with("place: us", "place: uk")
            .plus("inner-walls: { top-plate: double }\n")
            .sound()
            .house();
    assertEquals(false, said.innerWalls().singleTopPlate().orElseThrow());
  }

  /** A wall that is framed in a house of masonry does not get the thickness of masonry. */
  @Test
  void anotherKindHasAnotherThickness() throws IOException {
    House h =
        written()
            .with("place: us", "place: uk")
            .with("walls:\n", "walls:\n  - { side: office east, kind: framed, studs: 38x89 }\n")
            .sound()
            .house();
    Placed p = Survey.of(h).value();
    Wall framed = wallOn(p, "office", "east");
    assertTrue(framed.thickness() < Length.mm(200).nm(), "" + framed.thickness());
  }

  /**
   * Nor does it where somebody said how thick the masonry is: its studs, 89 mm, board 12.7 mm and
   * 30 mm outside, not 377 mm of cladding; inside 139.7 mm and two boards.
   */
  @Test
  void whatMasonryMeasuresIsNotWhatAFramedWallMeasures() throws IOException {
    String thick = "{ kind: masonry, thickness: 51 cm }";
    String framed = "walls:\n  - { side: office east, studs: 38x89 }\n";
    Placed house =
        Survey.of(
                written()
                    .with(
                        "levels:\n",
                        "outer-walls: "
                            + thick
                            + "\ninner-walls: { kind: masonry, thickness: 27 cm }\nlevels:\n")
                    .with("walls:\n", framed)
                    .sound()
                    .house())
            .value();
    assertEquals(131_700_000, wallOn(house, "office", "east").thickness());
    assertEquals(510_000_000, wallOn(house, "office", "south").thickness());
    long gap =
        house.getRoom("kitchen").outline().xRange().lo()
            - house.getRoom("garage").outline().xRange().hi();
    assertEquals(165_100_000, gap, 1_000);
    Placed level =
        Survey.of(
                written()
                    .with(
                        "floor: { joists: 2x10, run: east-west }",
                        "floor: { joists: 2x10, run: east-west }, outer-walls: " + thick)
                    .with("walls:\n", framed)
                    .sound()
                    .house())
            .value();
    assertEquals(131_700_000, wallOn(level, "office", "east").thickness());
    assertEquals(510_000_000, wallOn(level, "office", "south").thickness());
  }

  @Test
  void aKeyThatIsNotUsualIsRefused() throws IOException {
    written().plus("usual: { finnish: plaster }\n").assertProblemAt("finnish", "finish");
    written()
        .with("ceiling-height: 8 ft }", "ceiling-height: 8 ft, usual: { joists: 2x8 } }")
        .assertProblemAt("joists", "finish");
  }
}
