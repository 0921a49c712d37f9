package holloway.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holloway.geometry.Interval;
import holloway.support.Chain;
import org.junit.jupiter.api.Test;

/** A room without a straight face on a side is brought in line by the corner furthest out there. */
class CantedBayTest {
  private static final double MM = 1e6;

  private static String house(String rooms) {
    return """
        house: Bay
        place: uk
        built: 1936
        levels: { ground: { floor: slab, ceiling-height: 2.5 m } }
        rooms:
          front: { level: ground, size: 4 m x 4 m }
        """
        + rooms.indent(2)
        + """
        walls: [ { between: [front, bay], kind: open } ]
        cabinet: { in: front, wall: north, from: west 1 m, height: 1 m }
        outlets: [ { name: desk, in: front, wall: north, from: east 1 m, height: 400 mm, cables: [cat6] } ]
        """;
  }

  /** 2.5 m wide at the room, 1.5 m at the front, 600 mm deep; nothing of it runs north-south. */
  private static final String BAY =
      "bay: { level: ground, outline: [[0 m, 0.6 m], [0.5 m, 0 m], [2 m, 0 m], [2.5 m, 0.6 m]],"
          + " south-of: front, %s }";

  private static double[] box(String text, String room) {
    Interval x = Chain.of(house(text)).placed().getRoom(room).outline().xRange();
    return new double[] {x.lo() / MM, x.hi() / MM};
  }

  @Test
  void itsWestCornerStandsWhereTheShiftSays() {
    double front = box(BAY.formatted("align: west"), "front")[0];
    double[] bay = box(BAY.formatted("align: west, shift: 750 mm"), "bay");
    assertEquals(front + 750, bay[0], 1e-6);
    assertEquals(front + 750 + 2500, bay[1], 1e-6);
  }

  /** 4 m less 2.5 m, and 200 mm less because a shift runs east. */
  @Test
  void orItsEastCorner() {
    double front = box(BAY.formatted("align: west"), "front")[0];
    double[] bay = box(BAY.formatted("align: east, shift: -200 mm"), "bay");
    assertEquals(front + 4000 - 200, bay[1], 1e-6);
    assertEquals(front + 4000 - 200 - 2500, bay[0], 1e-6);
  }
}
