package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * One room of 6 m by 4 m on a slab, without a roof: the only way is on the walls, from the south
 * wall by the east wall to the north wall, and its length is that of the walls.
 */
class RoomShapesTest {
  private static final String HOUSE =
      """
      house: One Room
      place: us
      built: 1990
      outer-walls: { studs: 2x4, every: 16 in }
      inner-walls: { studs: 2x4, every: 16 in }
      levels: { main: { ceiling-height: 2.5 m, floor: slab } }
      rooms:
        hall: { level: main, SHAPE, plain: yes }
      cabinet: { in: hall, wall: south, from: west 3 m, height: 1 m }
      outlets:
        - { name: desk, in: hall, wall: north, from: west 3 m, height: 1 m, cables: [cat6] }
      """;

  private static final String NORTH = "wall: north, from: west 3 m";
  private static final String RECTANGLE = "size: 6 m x 4 m";

  private static Plan plan(String shape, String... ends) {
    String text = HOUSE.replace("SHAPE", shape);
    for (int i = 0; i < ends.length; i += 2) {
      text = text.replace(ends[i], ends[i + 1]);
    }
    Plan p = WrittenHouse.of(text).plan("outside");
    assertEquals(List.of(), p.unrouted());
    assertEquals(0, p.totals().holes());
    return p;
  }

  private static String outline(String corners) {
    return "outline: [" + corners.replaceAll("([0-9.-]+) ([0-9.-]+),?", "[$1 m, $2 m],") + "]";
  }

  private static double metres(String corners, String... ends) {
    return plan(outline(corners), ends).totals().routeM();
  }

  private static double rectangle() {
    return plan(RECTANGLE).totals().routeM();
  }

  @Test
  @Feature("L-shaped room")
  void roundTheCornerOfAnLItIsAsFarAsRoundTheRectangle() {
    // A bite of 2 m by 1.5 m out of the north-east leaves the
    // length of the walls as it is.
    assertEquals(rectangle(), metres("0 0, 6 0, 6 2.5, 4 2.5, 4 4, 0 4"), 0.05);
  }

  @Test
  @Feature("T-shaped room")
  void roundTheStemOfATBothSidesAreAsFar() {
    // Bites of 1.5 m by 1.5 m out of both northern corners: again the length of the walls.
    assertEquals(
        rectangle(),
        metres(
            "0 0, 6 0, 6 2.5, 4.5 2.5, 4.5 4, 1.5 4, 1.5 2.5, 0 2.5",
            NORTH,
            "wall: north 2, from: west 1.5 m"),
        0.05);
  }

  @Test
  @Feature("angled wall")
  void anAngledWallCutsTheCorner() {
    // Corner cut over 1.5 m and 1.5 m in the north-east: 3 m of wall become 1.5 x root 2 = 2.1213.
    double cut = metres("0 0, 6 0, 6 2.5, 4.5 4, 0 4");
    assertEquals(3 - 1.5 * Math.sqrt(2), rectangle() - cut, 0.05);
  }

  @Test
  @Feature("alcove")
  void anAlcoveIsGoneRoundOnBothWays() {
    // 600 mm deep alcoves in the east and the west wall: in and out again.
    double alcoves =
        metres(
            "0 0, 6 0, 6 1, 6.6 1, 6.6 3, 6 3, 6 4, 0 4, 0 3, -0.6 3, -0.6 1, 0 1",
            NORTH,
            "wall: north 2, from: west 3 m",
            "wall: south",
            "wall: south 2");
    assertEquals(2 * 0.6, alcoves - rectangle(), 0.05);
  }

  @Test
  @Feature("closet in a room")
  void aClosetInTheCornerIsEnteredByOneHole() {
    // In the bite of the L, walls of 114.3 mm between: the shelf on its north wall is reached
    // through one of them alone.
    String closet =
        HOUSE
            .replace("SHAPE", outline("0 0, 6 0, 6 2.5, 4 2.5, 4 4, 0 4"))
            .replace(
                "cabinet:",
                "  closet: { level: main, size: 1885.7 mm x 1385.7 mm, east-of: hall, align: north, shift: 0 mm, plain: yes }\ncabinet:")
            .replace(
                "in: hall, wall: north, from: west 3 m", "in: closet, wall: north, from: west 1 m");
    Plan p = WrittenHouse.of(closet).plan("outside");
    assertEquals(List.of(), p.unrouted());
    assertEquals(1, p.totals().holes());
    // set-up 4, board 1, void 1, board 1, seal 2
    assertEquals(9, p.holes().get(0).minutes(), 1e-9);
    Plan none = WrittenHouse.of(closet).plan("outside", p.holes().get(0).kind());
    assertEquals(1, none.totals().holes() + none.unrouted().size());
  }
}
