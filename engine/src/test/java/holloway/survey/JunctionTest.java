package holloway.survey;

import static holloway.support.HouseBuilder.ft;
import static holloway.support.HouseBuilder.house;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.geometry.Interval;
import holloway.house.Room.Placing;
import holloway.house.Side;
import holloway.units.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Which wall runs through where walls meet. Board is 12.7 mm, studs are 88.9 mm. */
class JunctionTest {
  private static Placed survey(holloway.support.HouseBuilder b) {
    return Survey.of(b.build()).value();
  }

  /** A 20 ft hall with two rooms of 10 ft less half a wall north of it. */
  private static Placed tee() {
    Length half = ft(10).minus(Length.inches(9, 4));
    return survey(
        house()
            .slab("ground", ft(8))
            .first("hall", "ground", ft(20), ft(6))
            .beside("left", half, ft(9), Side.NORTH, "hall", Side.WEST)
            .beside("right", half, ft(9), Side.NORTH, "hall", Side.EAST));
  }

  @Test
  void atATeeTheWallThatPassesRunsThroughAndIsOneWall() {
    Placed p = tee();
    Wall through = p.getWall("ground/hall-left/1");
    assertEquals(
        List.of("hall", "left", "right"),
        through.faces().stream().map(Wall.WallFace::room).toList());
    // 20 ft clear, and 12.7 mm of board at each end to the outer walls' studs
    assertEquals(ft(20).nm() + 25_400_000, through.length());
    Wall butting = p.getWall("ground/left-right/1");
    // 9 ft clear, 12.7 mm of board on the through wall, 12.7 mm on the north wall
    assertEquals(ft(9).nm() + 25_400_000, butting.length());
    assertEquals(1, through.junctions().size());
    Wall.Junction j = through.junctions().get(0);
    assertEquals("ground/left-right/1", j.other());
    assertEquals(1, j.side());
    // left is 117.75 in wide; the butting core starts 12.7 mm past its face, 12.7 mm more from s =
    // 0
    long lo = Length.inches(471, 4).nm() + 12_700_000 + 12_700_000;
    assertEquals(new Interval(lo, lo + 88_900_000), j.s());
    assertTrue(butting.junctions().isEmpty());
  }

  @Test
  void atACrossingTheLongerInnerWallRunsThroughAndTheOtherIsCutInTwo() {
    Placed p =
        survey(
            house()
                .slab("ground", ft(8))
                .first("sw", "ground", ft(12), ft(8))
                .beside("se", ft(12), ft(8), Side.EAST, "sw", Side.SOUTH)
                .beside("nw", ft(12), ft(8), Side.NORTH, "sw", Side.WEST)
                .beside("ne", ft(12), ft(8), Side.NORTH, "se", Side.WEST));
    Wall through = p.getWall("ground/nw-sw/1");
    assertEquals(ft(24).nm() + Length.inches(9, 2).nm() + 25_400_000, through.length());
    assertEquals(4, through.faces().size());
    for (String id : List.of("ground/se-sw/1", "ground/ne-nw/1")) {
      Wall half = p.getWall(id);
      assertEquals(ft(8).nm() + 12_700_000 + 12_700_000, half.length(), id);
      assertEquals(2, half.faces().size());
    }
    assertEquals(2, through.junctions().size());
    assertEquals("ground/se-sw/1", through.junctions().get(0).other());
    assertEquals(0, through.junctions().get(0).side());
    assertEquals("ground/ne-nw/1", through.junctions().get(1).other());
    assertEquals(1, through.junctions().get(1).side());
  }

  /** 20 ft x 15 ft with the south-east 10 ft x 5 ft left out. */
  private static Placed ell() {
    return survey(
        house()
            .slab("ground", ft(8))
            .outline(
                "room",
                "ground",
                new Placing.Free(),
                0,
                0,
                120,
                0,
                120,
                60,
                240,
                60,
                240,
                180,
                0,
                180));
  }

  @Test
  void anLShapedRoomHasTwoSouthFacesAndSixOuterWalls() {
    Placed p = ell();
    assertEquals(6, p.walls().size());
    List<Placed.Segment> south = p.listFaces("room", Side.SOUTH);
    assertEquals(2, south.size());
    assertEquals(0, south.get(0).start().y());
    assertEquals(Length.inches(60).nm(), south.get(1).start().y());
  }

  @Test
  void atItsInnerCornerTheEastWestWallRunsThroughToTheBoardOfTheOther() {
    Placed p = ell();
    Wall second =
        p.walls().stream()
            .filter(
                w -> w.faces().get(0).roomSide() == Side.SOUTH && w.faces().get(0).ordinal() == 2)
            .findFirst()
            .orElseThrow();
    // from 12.7 mm behind the corner's east-looking face to 12.7 mm before the studs of the wall at
    // its east end, which is as long and stands in its way: 120 in - 12.7 + 12.7
    assertEquals(Length.inches(120).nm() + 12_700_000, second.frame().origin().x());
    assertEquals(Length.inches(120).nm(), second.length());
    Wall step =
        p.walls().stream()
            .filter(
                w -> w.faces().get(0).roomSide() == Side.EAST && w.faces().get(0).ordinal() == 1)
            .findFirst()
            .orElseThrow();
    // 60 in of face; at the south 12.7 mm more to the first wall's core; at the north the second
    // wall's core begins 101.6 mm before the corner
    assertEquals(Length.inches(60).nm() + 12_700_000 - 101_600_000, step.length());
    // the wall at its east end is none of its junctions: it ends there
    assertEquals(List.of(0), second.junctions().stream().map(Wall.Junction::side).toList());
  }

  @Test
  void theFootprintOfAnLHasSixCorners() {
    assertEquals(6, ell().getLevel("ground").footprint().get(0).corners().size());
  }

  /** Behind the big room's one east face: an inner wall to 10 ft, an outer one from there. */
  @Test
  void outerAndInnerStretchesBehindOneFaceAreTwoWallsInOneLine() {
    Placed p =
        survey(
            house()
                .slab("ground", ft(8))
                .first("big", "ground", ft(15), ft(20))
                .beside("annex", ft(8), ft(10), Side.EAST, "big", Side.SOUTH));
    Wall inner = p.getWall("ground/annex-big/1");
    Wall outer =
        p.walls().stream()
            .filter(w -> w.isOuter() && w.faces().get(0).room().equals("big"))
            .filter(w -> w.faces().get(0).roomSide() == Side.EAST)
            .findFirst()
            .orElseThrow();
    assertEquals(ft(10).nm() + 12_700_000, inner.length());
    assertEquals(ft(10).nm(), outer.frame().origin().y());
    assertEquals(ft(10).nm() + 12_700_000, outer.length());
    // the annex's north wall butts into the outer one, its studs 12.7 to 101.6 mm past 10 ft
    Wall.Junction j = outer.junctions().get(0);
    assertEquals(0, j.side());
    assertEquals(new Interval(12_700_000, 101_600_000), j.s());
  }

  /** Between the two rooms a shaft 24 in wide reaches the outer wall, which goes on before it. */
  @Test
  void theOuterWallGoesOnInFrontOfANarrowRecess() {
    holloway.support.HouseBuilder b =
        house()
            .slab("ground", ft(8))
            .first("hall", "ground", ft(20), ft(5))
            .beside("left", ft(9), ft(8), Side.NORTH, "hall", Side.WEST)
            .beside("right", ft(9), ft(8), Side.NORTH, "hall", Side.EAST);
    List<Wall> north =
        survey(b).walls().stream().filter(w -> w.outside() == 1 && w.frame().u().x() == 1).toList();
    assertEquals(1, north.size());
    assertEquals(ft(20).nm() + 2 * 101_600_000, north.get(0).length());
  }

  /** 10 ft x 10 ft with the north-east corner cut at 45 degrees over 4 ft. */
  @Test
  void anAngledFaceHasItsOwnWallAndSharesNoFraming() {
    Placed p =
        survey(
            house()
                .slab("ground", ft(8))
                .outline(
                    "bay", "ground", new Placing.Free(), 0, 0, 120, 0, 120, 72, 72, 120, 0, 120));
    assertEquals(5, p.walls().size());
    Wall angled =
        p.walls().stream().filter(w -> w.frame().u().x() % 1 != 0).findFirst().orElseThrow();
    assertTrue(angled.isOuter());
    assertEquals(Math.sqrt(0.5), angled.frame().u().x(), 1e-9);
    assertEquals(-Math.sqrt(0.5), angled.frame().u().y(), 1e-9);
    // 48 in by 48 in: 67.88 in of face
    Wall.WallFace f = angled.faces().get(0);
    assertTrue(angled.length() <= Math.round(48 * Math.sqrt(2) * 25.4e6) + 1);
    assertTrue(f.s().length() > 60 * 25_400_000L);
  }
}
