package holloway.survey;

import static holloway.support.HouseBuilder.ft;
import static holloway.support.HouseBuilder.house;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.house.Side;
import holloway.support.HouseBuilder;
import holloway.support.WallDraft;
import holloway.units.Length;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Which stretches in one line are one wall does not hang on the end that one begins at. */
class StripMergerTest {
  private static Length mm(long mm) {
    return new Length(mm * Length.NM_PER_MM);
  }

  /** Each wall: the rooms it shows to and its length in millimetres. */
  private static List<String> walls(HouseBuilder b) {
    return Survey.of(b.build()).value().walls().stream()
        .map(w -> rooms(w) + " " + Math.round(w.length() / 1e6))
        .sorted()
        .toList();
  }

  private static TreeSet<String> rooms(Wall w) {
    TreeSet<String> out = new TreeSet<>();
    w.faces().forEach(f -> out.add(f.room()));
    return out;
  }

  /** Three rooms of 3 m along a hall, each behind a wall of its own thickness. */
  private static HouseBuilder row(Side first, long a, long b, long c) {
    return house()
        .slab("ground", ft(8))
        .innerWalls(WallDraft.usual().thickness(mm(120)))
        .wall(WallDraft.between("hall", "a").thickness(mm(a)))
        .wall(WallDraft.between("hall", "b").thickness(mm(b)))
        .wall(WallDraft.between("hall", "c").thickness(mm(c)))
        .first("hall", "ground", mm(9240), mm(1500))
        .beside("a", mm(3000), mm(2500), Side.NORTH, "hall", first)
        .beside(
            "b",
            mm(3000),
            mm(2500),
            Side.NORTH,
            "hall",
            first,
            mm(first == Side.WEST ? 3120 : -3120))
        .beside("c", mm(3000), mm(2500), Side.NORTH, "hall", first.opposite());
  }

  /**
   * The middle of three walls is 11 mm thicker than the first and 8 mm thinner than the last: both
   * are within 12 mm, but all three are not, and the last fits better.
   */
  @Test
  void aStretchGoesOnWithTheNeighbourThatFitsBetter() {
    for (Side first : List.of(Side.WEST, Side.EAST)) {
      List<String> walls = walls(row(first, 120, 131, 139));
      // 3 m and a wall of 120 mm for each room, 12.7 mm of board to the studs at the end
      assertTrue(walls.contains("[b, c, hall] 6133"), walls.toString());
      assertTrue(walls.contains("[a, hall] 3133"), walls.toString());
    }
  }

  /**
   * A room north of two others ends 50 mm past the wall between them: too little for a wall of its
   * own before the second room, it belongs to the wall that goes on from there.
   */
  @Test
  void aShortLeftoverBelongsToTheWallBesideItAtEitherEnd() {
    assertEquals(walls(pastAWall(Side.EAST)), walls(pastAWall(Side.WEST)));
  }

  private static HouseBuilder pastAWall(Side side) {
    return house()
        .slab("ground", ft(8))
        .wall(WallDraft.between("one", "two").thickness(mm(320)))
        .first("one", "ground", mm(4560), mm(2600))
        .beside("two", mm(4580), mm(2600), side, "one", Side.SOUTH)
        .beside("past", mm(4930), mm(4220), Side.NORTH, "one", side.opposite());
  }
}
