package holloway.survey;

import static holloway.support.HouseBuilder.ft;
import static holloway.support.HouseBuilder.house;
import static holloway.support.HouseBuilder.in;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.geometry.Interval;
import holloway.house.Along;
import holloway.house.FaceRef;
import holloway.house.Fact;
import holloway.house.Found;
import holloway.house.Opening;
import holloway.house.Origin;
import holloway.house.Side;
import holloway.house.WallRef;
import holloway.house.Where;
import holloway.support.HouseBuilder;
import holloway.support.WallDraft;
import holloway.units.Length;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Openings and studs on the wall between a 10 ft and a 12 ft room, both 8 ft deep. */
class OnWallsTest {
  private static final long BOARD = 12_700_000;

  private static HouseBuilder rooms() {
    return house()
        .slab("ground", ft(8))
        .first("den", "ground", ft(10), ft(8))
        .beside("hall", ft(12), ft(8), Side.EAST, "den", Side.SOUTH);
  }

  private static Along from(Side side, Length distance) {
    return new Along(side, Fact.measured(distance, Where.NOWHERE));
  }

  private static WallRef between() {
    return new WallRef(
        Optional.of(new WallRef.Between("den", "hall", 1)), Optional.empty(), Where.NOWHERE);
  }

  private static WallRef behind(String room, Side side) {
    return new WallRef(
        Optional.empty(), Optional.of(new FaceRef(room, side, 1, Where.NOWHERE)), Where.NOWHERE);
  }

  private static Opening door(WallRef wall, Along along, Length width) {
    return opening(Opening.Kind.DOOR, wall, along, width, Length.ZERO, ft(6, 8));
  }

  private static Opening opening(
      Opening.Kind kind, WallRef wall, Along along, Length width, Length sill, Length head) {
    return new Opening(
        kind,
        wall,
        along,
        Fact.measured(width, Where.NOWHERE),
        Fact.measured(sill, Where.NOWHERE),
        Fact.measured(head, Where.NOWHERE),
        Where.NOWHERE);
  }

  private static Wall inner(HouseBuilder b) {
    return Survey.of(b.build()).value().getWall("ground/den-hall/1");
  }

  private static List<String> problems(HouseBuilder b) {
    SurveyException e = assertThrows(SurveyException.class, () -> Survey.of(b.build()));
    return e.problems().stream().map(SurveyException.Problem::text).toList();
  }

  @Test
  void aDoorFromTheNorthEnd() {
    Wall w = inner(rooms().opening(door(between(), from(Side.NORTH, ft(2, 1)), in(32))));
    // visible face 12.7 .. 96 in + 12.7; near side 25 in from the north, leaf 32 in, 25.5 mm round
    long near = BOARD + in(96 - 25 - 32).nm();
    Wall.WallOpening o = w.openings().get(0);
    assertEquals(new Interval(near - 25_500_000, near + in(32).nm() + 25_500_000), o.s());
    // head 80 in and 2-1/2 in over it; the plate is cut
    assertEquals(new Interval(0, in(165, 2).nm()), o.z());
  }

  @Test
  void aWindowHasHalfAnInchRound() {
    Opening window =
        opening(
            Opening.Kind.WINDOW,
            behind("hall", Side.NORTH),
            from(Side.WEST, ft(3)),
            ft(4),
            ft(3),
            ft(6, 8));
    Placed p = Survey.of(rooms().opening(window).build()).value();
    Wall w = p.walls().stream().filter(x -> !x.openings().isEmpty()).findFirst().orElseThrow();
    assertEquals(1, w.outside());
    Wall.WallFace face =
        w.faces().stream().filter(f -> f.room().equals("hall")).findFirst().orElseThrow();
    Wall.WallOpening o = w.openings().get(0);
    assertEquals(face.s().lo() + ft(3).nm() - BOARD, o.s().lo());
    assertEquals(ft(4).nm() + 2 * BOARD, o.s().length());
    assertEquals(new Interval(ft(3).nm() - BOARD, ft(6, 8).nm() + BOARD), o.z());
  }

  @Test
  void anOpeningOffItsWallIsRefused() {
    List<String> said = problems(rooms().opening(door(between(), from(Side.NORTH, ft(6)), in(32))));
    assertTrue(said.get(0).contains("is off the wall between den and hall"), said.toString());
  }

  @Test
  void overlappingOpeningsAreRefused() {
    HouseBuilder b =
        rooms()
            .opening(door(between(), from(Side.NORTH, ft(2)), in(32)))
            .opening(door(between(), from(Side.SOUTH, ft(2)), in(32)));
    assertTrue(problems(b).get(0).contains("two openings share space"));
  }

  @Test
  void anOpeningHigherThanItsWallIsRefused() {
    // wall 96.5 in high less 3 in of plates leaves 93.5 in: a head at 92 in needs 94.5 in
    Opening tall =
        opening(Opening.Kind.DOOR, between(), from(Side.NORTH, ft(2)), in(32), Length.ZERO, in(92));
    assertTrue(problems(rooms().opening(tall)).get(0).contains("does not fit under the top"));
  }

  @Test
  void aTapedEndThatTheWallDoesNotHaveIsRefused() {
    HouseBuilder b = rooms().opening(door(between(), from(Side.WEST, ft(2)), in(32)));
    assertTrue(problems(b).get(0).contains("has no west end"));
  }

  @Test
  void unknownStudsAreLaidOutFromTheSouthEndAndSaidToBeAssumed() {
    Placed p = Survey.of(rooms().build()).value();
    Wall w = p.getWall("ground/den-hall/1");
    assertTrue(w.studOrigin().isAssumed());
    assertEquals(in(16).nm(), w.studOrigin().value());
    // anywhere within 406.4 mm: 406.4 / root 12 = 117.3
    assertEquals(117, w.studOrigin().spread().toMm());
    assertTrue(
        p.assumed().stream()
            .anyMatch(
                t -> t.startsWith("ground/den-hall/1: studs taken to be laid out from its south")));
  }

  @Test
  void aStatedStudIsConvertedToTheFramingEnd() {
    Wall w = inner(rooms().wall(WallDraft.between("den", "hall").studsFrom(Side.SOUTH, in(7))));
    assertEquals(in(7).nm() + BOARD, w.studOrigin().value());
    assertEquals(Origin.MEASURED, w.studOrigin().origin());
    Wall n = inner(rooms().wall(WallDraft.between("den", "hall").studsFrom(Side.NORTH, in(7))));
    assertEquals(in(96 - 7).nm() + BOARD, n.studOrigin().value());
  }

  @Test
  void aFoundStudWinsOverAStatedOne() {
    Found.Stud stud =
        new Found.Stud(
            new FaceRef("hall", Side.WEST, 1, Where.NOWHERE),
            from(Side.SOUTH, in(9)),
            Where.NOWHERE);
    HouseBuilder b =
        rooms().wall(WallDraft.between("den", "hall").studsFrom(Side.SOUTH, in(7))).found(stud);
    Wall w = inner(b);
    assertEquals(in(9).nm() + BOARD, w.studOrigin().value());
    assertEquals(Origin.FOUND, w.studOrigin().origin());
    assertFalse(
        Survey.of(b.build()).value().assumed().stream()
            .anyMatch(t -> t.startsWith("ground/den-hall/1: studs taken to be laid out")));
  }

  @Test
  void aSpotOnAFaceIsFoundOnItsWall() {
    Placed p = Survey.of(rooms().build()).value();
    FaceRef face = new FaceRef("hall", Side.WEST, 1, Where.NOWHERE);
    OnWall spot = p.findSpot(face, from(Side.SOUTH, ft(3)), in(16).nm()).orElseThrow();
    assertEquals("ground/den-hall/1", spot.wall().id());
    assertEquals(0, spot.side());
    assertEquals(ft(3).nm() + BOARD, spot.s());
    assertEquals(in(16).nm(), spot.z());
    OnWall same = p.findSpot(face, from(Side.NORTH, ft(5)), in(16).nm()).orElseThrow();
    assertEquals(spot.s(), same.s());
    assertTrue(p.findSpot(face, from(Side.SOUTH, ft(9)), 0).isEmpty());
    FaceRef second = new FaceRef("hall", Side.WEST, 2, Where.NOWHERE);
    assertTrue(p.findSpot(second, from(Side.SOUTH, ft(1)), 0).isEmpty());
  }

  @Test
  void aNamedWallKeepsItsName() {
    Placed p =
        Survey.of(rooms().wall(WallDraft.between("hall", "den").named("wet wall")).build()).value();
    assertEquals("wet wall", p.getWall("wet wall").id());
  }
}
