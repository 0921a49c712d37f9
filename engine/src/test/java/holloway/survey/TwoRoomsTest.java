package holloway.survey;

import static holloway.support.HouseBuilder.ft;
import static holloway.support.HouseBuilder.house;
import static org.junit.jupiter.api.Assertions.assertEquals;

import holloway.geometry.Interval;
import holloway.geometry.Point2;
import holloway.geometry.Point3;
import holloway.geometry.Polygon2;
import holloway.house.Side;
import holloway.units.Length;
import org.junit.jupiter.api.Test;

/** Two rooms side by side: 10 ft x 8 ft and 12 ft x 8 ft with one 4-1/2 in wall between. */
class TwoRoomsTest {
  private final Placed placed =
      Survey.of(
              house()
                  .slab("ground", ft(8))
                  .first("den", "ground", ft(10), ft(8))
                  .beside("hall", ft(12), ft(8), Side.EAST, "den", Side.SOUTH)
                  .build())
          .value();

  @Test
  void roomsKeepTheirTapedSizesAndStandOneWallApart() {
    assertEquals(
        Polygon2.rectangle(0, 0, ft(10).nm(), ft(8).nm()), placed.getRoom("den").outline());
    long west = ft(10).nm() + Length.inches(9, 2).nm();
    assertEquals(
        Polygon2.rectangle(west, 0, west + ft(12).nm(), ft(8).nm()),
        placed.getRoom("hall").outline());
    assertEquals(0, placed.getRoom("den").floorZ());
    assertEquals(ft(8).nm(), placed.getRoom("den").ceilingZ());
  }

  @Test
  void theWallBetweenHasItsStudsInTheMiddle() {
    Wall w = placed.getWall("ground/den-hall/1");
    assertEquals(Length.inches(9, 2).nm(), w.thickness());
    // 114.3 - 88.9 leaves 12.7 on each side
    assertEquals(new Interval(12_700_000, 101_600_000), w.core());
    assertEquals(-1, w.outside());
    // framing runs from the south wall's core to the north wall's: 12.7 mm of board more each end
    assertEquals(ft(8).nm() + 2 * 12_700_000, w.length());
    // t = 0 is the hall's face (east, -v of a wall that runs north)
    assertEquals(
        new Point3(ft(10).nm() + Length.inches(9, 2).nm(), -12_700_000, 0), w.world(0, 0, 0));
    // the plate stands on the floor and the top plate carries what lies on the ceiling board
    assertEquals(ft(8).nm() + 12_700_000, w.height());
  }

  @Test
  void fiveWallsOneOfThemInner() {
    assertEquals(
        "[ground/den-hall/1, ground/den-outside/1, ground/den-outside/2, ground/den-outside/3,"
            + " ground/hall-outside/1]",
        placed.walls().stream().map(Wall::id).toList().toString());
  }

  @Test
  void theSouthWallRunsThroughBothCornersAndTakesTheInnerWall() {
    Wall south =
        placed.walls().stream()
            .filter(w -> w.outside() == 0 && w.frame().u().x() == 1)
            .findFirst()
            .orElseThrow();
    // 10 ft + 4-1/2 in + 12 ft, and at each end 12.7 board + 88.9 stud of the wall it meets
    long clear = ft(22).nm() + Length.inches(9, 2).nm();
    assertEquals(clear + 2 * (12_700_000 + 88_900_000), south.length());
    // outside: cladding 19 + sheathing 11, then the stud, then board towards the rooms
    assertEquals(new Interval(30_000_000, 118_900_000), south.core());
    assertEquals(131_600_000, south.thickness());
    assertEquals(2, south.faces().size());
    assertEquals(3, south.junctions().size());
    long start = -101_600_000L;
    Interval inner = south.junctions().get(1).s();
    assertEquals(ft(10).nm() + 12_700_000 - start, inner.lo());
    assertEquals(ft(10).nm() + 12_700_000 + 88_900_000 - start, inner.hi());
    assertEquals(1, south.junctions().get(1).side());
  }

  @Test
  void theFootprintEndsAtTheOuterFaceOfTheStuds() {
    Polygon2 print = placed.getLevel("ground").footprint().get(0);
    assertEquals(-101_600_000, print.xRange().lo());
    assertEquals(-101_600_000, print.yRange().lo());
    assertEquals(ft(8).nm() + 101_600_000, print.yRange().hi());
    assertEquals(4, print.corners().stream().map(Point2::x).distinct().count() * 2);
  }
}
