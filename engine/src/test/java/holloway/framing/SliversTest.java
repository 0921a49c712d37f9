package holloway.framing;

import static holloway.support.HouseBuilder.ft;
import static holloway.support.HouseBuilder.house;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.geometry.Polygon2;
import holloway.house.WallSpec;
import holloway.support.WallDraft;
import holloway.survey.Placed;
import holloway.survey.Survey;
import holloway.units.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What only rounding makes is no space: a nanometre joins nothing and is over nothing. */
class SliversTest {
  private static final long MM = Length.NM_PER_MM;

  private static Polygon2 rectangle(long west, long south, long east, long north, long nm) {
    return Polygon2.rectangle(west * MM, south * MM, east * MM, north * MM + nm);
  }

  /**
   * A room of 4 m by 3 m in brick of 270 mm: beside it and its walls there are the four corners of
   * the brick, 0.07 m² each and so too small for a part, but not two of them together.
   */
  @Test
  void aNanometreAlongAWallDoesNotJoinItsEnds() {
    WallDraft brick = WallDraft.usual().kind(WallSpec.Kind.MASONRY).thickness(new Length(270 * MM));
    Placed placed =
        Survey.of(
                house()
                    .outerWalls(brick)
                    .slab("ground", ft(8))
                    .first("hall", "ground", new Length(4000 * MM), new Length(3000 * MM))
                    .build())
            .value();
    for (long nm : new long[] {0, 1}) {
      Polygon2 outline = rectangle(-270, -270, 4270, 3270, nm);
      assertEquals(List.of(), Outlines.without(placed, outline, placed.rooms()));
    }
    // half a metre more to the east is space: 0.5 m by 3.54 m
    Polygon2 more = rectangle(-270, -270, 4770, 3270, 0);
    assertEquals(1, Outlines.without(placed, more, placed.rooms()).size());
  }

  @Test
  void whatTouchesARoomIsNotOverIt() {
    Polygon2 room = rectangle(0, 0, 4000, 3000, 0);
    assertFalse(NeighbourFramer.overlap(room, rectangle(0, 3000, 4000, 5000, 0)));
    Polygon2 rounded = rectangle(0, 0, 4000, 3000, 1);
    assertFalse(NeighbourFramer.overlap(rounded, rectangle(0, 3000, 4000, 5000, 0)));
    assertTrue(NeighbourFramer.overlap(room, rectangle(0, 2990, 4000, 5000, 0)));
  }
}
