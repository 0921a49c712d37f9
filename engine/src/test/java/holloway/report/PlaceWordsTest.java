package holloway.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.geometry.Point3;
import holloway.pipeline.TwoStoreys;
import holloway.support.Chain;
import holloway.survey.Placed;
import holloway.survey.Survey;
import holloway.survey.Wall;
import holloway.survey.WallNames;
import holloway.units.UnitSystem;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A place in a wall is said by its rooms, and taped within one of them. */
class PlaceWordsTest {
  private static final String LONG_WALL =
      """
      house: Two rooms on one outer wall (invented)
      place: uk
      built: 1994
      levels: { ground: { floor: slab, ceiling-height: 2400 mm } }
      rooms:
        den: { level: ground, size: 3 m x 3 m }
        study: { level: ground, size: 3 m x 3 m, east-of: den, align: south }
      cabinet: { in: den, wall: south, from: west 1 m, height: 1 m }
      outlets:
        - { name: desk, in: study, wall: south, from: west 1 m, height: 400 mm, cables: [cat6] }
      """;

  private static Placed placed(String text) {
    return Survey.of(Chain.read(text, "").house()).value();
  }

  @Test
  void tapedFromTheCornerOfTheRoomThatSeesIt() {
    Placed placed = placed(LONG_WALL);
    var spot =
        placed.walls().stream()
            .filter(w -> w.faces().size() > 1 && w.isOuter())
            .flatMap(
                w -> w.faces().stream().filter(f -> f.room().equals("study")).map(f -> at(w, f)))
            .findFirst()
            .orElseThrow();
    String said = new PlaceWords(placed, new UnitWords(UnitSystem.METRIC)).of(spot);
    assertTrue(said.contains("outer wall of study, 1.000 m from its west end in the study"), said);
  }

  /** Joists in a row are bored at the same place of each: which one it is has to be said. */
  @Test
  void overACeilingItIsSaidWhereOverIt() {
    Placed placed = Survey.of(Chain.read(TwoStoreys.TEXT, "").house()).value();
    Point3 corner =
        placed.getRoom("garage").outline().corners().get(0).at(placed.getRoom("garage").ceilingZ());
    PlaceWords words = new PlaceWords(placed, new UnitWords(UnitSystem.METRIC));
    long mm = 1_000_000L;
    // 12 ft are 3657.6 mm: 2000 mm from the south are 1657.6 mm from the north.
    for (long west : new long[] {500, 900}) {
      Point3 joist =
          new Point3(corner.x() + west * mm, corner.y() + 2000 * mm, corner.z() + 100 * mm);
      assertEquals(
          "above the ceiling of garage, %d mm from the west wall and 1.658 m from the north wall"
              .formatted(west),
          words.of(joist));
    }
    Point3 low =
        placed.getRoom("office").outline().corners().get(0).at(placed.getRoom("garage").floorZ());
    Point3 under = new Point3(low.x() + 500 * mm, low.y() + 600 * mm, low.z() - 100 * mm);
    assertEquals(
        "under the floor of garage, 500 mm from the west wall and 600 mm from the south wall",
        words.of(under));
  }

  private static Point3 at(Wall w, Wall.WallFace f) {
    return w.world(f.s().lo() + 1_000_000_000L, w.core().mid(), 1_000_000_000L);
  }

  /** Where walls join no room sees the place: the nearest ones name it. */
  @ParameterizedTest
  @ValueSource(strings = {"tin-street", "wren-hollow"})
  void noWallIsSaidByItsId(String sample) throws Exception {
    Placed placed = placed(Files.readString(Path.of("../samples/" + sample + ".yaml")));
    int walls = 0;
    for (Wall w : placed.walls()) {
      if (w.faces().isEmpty()) {
        continue;
      }
      walls++;
      for (long s = 0; s <= w.length(); s += 20_000_000L) {
        assertFalse(WallNames.at(w, s).contains("/"), w.id() + " at " + s);
      }
    }
    assertTrue(walls > 10);
  }
}
