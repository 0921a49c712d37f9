package holloway.survey;

import static holloway.support.HouseBuilder.ft;
import static holloway.support.HouseBuilder.house;
import static holloway.support.HouseBuilder.in;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.house.Fact;
import holloway.house.Room.Placing;
import holloway.house.Side;
import holloway.support.HouseBuilder;
import holloway.support.WallDraft;
import holloway.units.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What cannot be is refused, with all problems together. */
class ProblemsTest {
  private static List<String> problems(HouseBuilder b) {
    SurveyException e = assertThrows(SurveyException.class, () -> Survey.of(b.build()));
    return e.problems().stream().map(SurveyException.Problem::text).toList();
  }

  private static void assertSays(HouseBuilder b, String part) {
    List<String> said = problems(b);
    assertTrue(said.stream().anyMatch(t -> t.contains(part)), said.toString());
  }

  private static HouseBuilder den() {
    return house().slab("ground", ft(8)).first("den", "ground", ft(10), ft(8));
  }

  private static Placing at(HouseBuilder b, Length x, Length y) {
    return new Placing.At(b.taped(x), b.taped(y), b.where());
  }

  @Test
  void roomsThatOverlap() {
    HouseBuilder b = den();
    b.room("hall", "ground", ft(10), ft(8), at(b, ft(9), ft(1)));
    assertSays(b, "rooms den and hall overlap by 1 ft by 7 ft");
  }

  @Test
  void aWallUnder50MillimetresIsNoneAndOneOf50Is() {
    HouseBuilder thin = den();
    thin.room("hall", "ground", ft(10), ft(8), at(thin, ft(10).plus(Length.mm(49)), ft(0)));
    assertSays(thin, "only 1-15/16 in is left");
    HouseBuilder enough = den();
    enough.room("hall", "ground", ft(10), ft(8), at(enough, ft(10).plus(Length.mm(56)), ft(0)));
    assertEquals(2, Survey.of(enough.build()).value().rooms().size());
  }

  @Test
  void roomsPlacedRoundInACircle() {
    HouseBuilder b = den();
    b.room("x", "ground", ft(5), ft(5), b.besideOf(Side.EAST, "y", Side.SOUTH, Length.ZERO));
    b.room("y", "ground", ft(5), ft(5), b.besideOf(Side.EAST, "x", Side.SOUTH, Length.ZERO));
    List<String> said = problems(b);
    assertEquals(2, said.size());
    assertTrue(said.get(0).contains("lead round in a circle"));
  }

  @Test
  void aRoomBesideItselfOrBesideNothing() {
    HouseBuilder b = den();
    b.room("x", "ground", ft(5), ft(5), b.besideOf(Side.EAST, "x", Side.SOUTH, Length.ZERO));
    b.room("z", "ground", ft(5), ft(5), b.besideOf(Side.EAST, "porch", Side.SOUTH, Length.ZERO));
    List<String> said = problems(b);
    assertTrue(said.contains("room x is placed by itself"), said.toString());
    assertTrue(said.contains("room z is placed by porch, which is not a room"), said.toString());
  }

  @Test
  void twoRoomsWithoutAPlaceOrNone() {
    assertSays(den().first("hall", "ground", ft(5), ft(5)), "only the first room (den) may");
    HouseBuilder none = house().slab("ground", ft(8));
    none.room("x", "ground", ft(5), ft(5), at(none, ft(1), ft(1)));
    assertSays(none, "every room is placed by another");
  }

  @Test
  void aShiftPastTheNeighbour() {
    assertSays(
        den().beside("hall", ft(5), ft(5), Side.EAST, "den", Side.SOUTH, ft(9)),
        "no part of it faces it");
  }

  @Test
  void alignmentAlongTheWrongAxis() {
    assertSays(
        den().beside("hall", ft(5), ft(5), Side.EAST, "den", Side.WEST),
        "align one of the other two sides, not west");
  }

  @Test
  void levelsThatNothingOrders() {
    assertSays(den().slab("loft", ft(8)), "nothing tells which of the levels ground, loft");
    // A shed stands over neither the cellar nor the storey of the house.
    assertSays(den().slab("loft", ft(8)), "or beside: and step: if one stands beside");
  }

  @Test
  void levelsInACircle() {
    HouseBuilder b =
        house()
            .joists("one", StoreysTest.JOIST, holloway.house.Direction.EAST_WEST, ft(8), "two")
            .joists("two", StoreysTest.JOIST, holloway.house.Direction.EAST_WEST, ft(8), "one")
            .first("den", "one", ft(10), ft(8));
    assertSays(b, "levels one, two stand above each other in a circle");
  }

  @Test
  void anOutlineThatCrossesItself() {
    assertSays(
        house()
            .slab("ground", ft(8))
            .outline("den", "ground", new Placing.Free(), 0, 0, 100, 100, 100, 0, 0, 100),
        "crosses or touches itself");
  }

  @Test
  void aWallThatIsNotThere() {
    assertSays(
        den()
            .beside("hall", ft(5), ft(8), Side.EAST, "den", Side.SOUTH)
            .beside("bath", ft(5), ft(8), Side.EAST, "hall", Side.SOUTH)
            .wall(WallDraft.between("den", "bath").bearing(true)),
        "there is no wall between den and bath");
  }

  @Test
  void allProblemsComeTogetherInFileOrder() {
    HouseBuilder b = den();
    b.room("hall", "ground", ft(10), ft(8), at(b, ft(9), ft(1)));
    b.room("bath", "ground", ft(10), ft(8), at(b, ft(8), ft(2)));
    SurveyException e = assertThrows(SurveyException.class, () -> Survey.of(b.build()));
    assertEquals(3, e.problems().size());
    List<SurveyException.Problem> sorted =
        e.problems().stream()
            .sorted(java.util.Comparator.comparing(SurveyException.Problem::where))
            .toList();
    assertEquals(sorted, e.problems());
  }

  /** A tape that squeezes two rooms into each other is refused, not averaged away. */
  @Test
  void theAdjustmentNeverHidesAnOverlap() {
    HouseBuilder b = den();
    b.room("hall", "ground", ft(10), ft(8), at(b, ft(10).plus(in(9, 2)), ft(0)));
    holloway.house.FaceRef west = new holloway.house.FaceRef("den", Side.WEST, 1, b.where());
    holloway.house.FaceRef east = new holloway.house.FaceRef("hall", Side.EAST, 1, b.where());
    Fact<Length> sure = new Fact<>(ft(18), Length.mm(1), holloway.house.Origin.MEASURED, b.where());
    b.tape(new holloway.house.Tape(west, east, sure, b.where()));
    assertSays(b, "overlap");
  }
}
