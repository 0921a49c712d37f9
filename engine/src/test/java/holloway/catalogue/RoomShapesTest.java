package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holloway.hollow.Site;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * One room of 6 m by 4 m on a slab, without a roof: the only way is on the walls, from the south
 * wall by the east wall to the north wall, along every corner of the walls and no other way.
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

  private static final String RECTANGLE = "size: 6 m x 4 m";
  private static final String DESK = "wall: north, from: west 3 m, height: 1 m";

  /** From 1 m down to the line on the skirting and up to 1 m, 0.94 m each; 12 + 57.15 mm in. */
  private static final double ENDS = 2 * 0.94 + 0.06915;

  private static WrittenHouse house(String shape, String desk) {
    return WrittenHouse.of(HOUSE.replace("SHAPE", shape).replace(DESK, desk + ", height: 1 m"));
  }

  private static Plan plan(WrittenHouse house) {
    Plan p = house.plan("outside");
    assertEquals(List.of(), p.unrouted());
    return p;
  }

  private static String outline(String corners) {
    return "outline: [" + corners.replaceAll("([0-9.-]+) ([0-9.-]+),?", "[$1 m, $2 m],") + "]";
  }

  /** Where the line on the skirting of the hall turns, whole millimetres. */
  private static List<String> turns(Plan p) {
    return p.runs().get(0).steps().stream()
        .filter(s -> s.id().equals("hall/surface"))
        .flatMap(s -> s.path().stream())
        .filter(q -> q.z() == 60_000_000)
        .map(q -> Math.round(q.x() / 1e6) + " " + Math.round(q.y() / 1e6))
        .toList();
  }

  @Test
  @Feature("L-shaped room")
  void theWayFollowsTheInnerCornerOfAnL() {
    // A bite of 2 m by 1.5 m out of the north-east; the desk 800 mm up the bite's west wall. The
    // line keeps 12 mm off the walls: east 2988, north 2476, west 2000 to the inner corner, north
    // 812. By the west wall it would be 2988 + 3976 + 3976 + 688.
    Plan p =
        plan(house(outline("0 0, 6 0, 6 2.5, 4 2.5, 4 4, 0 4"), "wall: east 2, from: south 0.8 m"));
    assertEquals(List.of("3000 12", "5988 12", "5988 2488", "3988 2488", "3988 3300"), turns(p));
    assertEquals(2.988 + 2.476 + 2 + 0.812 + ENDS, p.totals().routeM(), 1e-6);
  }

  @Test
  @Feature("T-shaped room")
  void theWayGoesUpTheStemOfAT() {
    // Bites of 1.5 m by 1.5 m out of both northern corners; the desk on the west wall of the stem,
    // 700 mm up. West 2988, north 2476, east 1500 to the inner corner, north 712.
    Plan p =
        plan(
            house(
                outline("0 0, 6 0, 6 2.5, 4.5 2.5, 4.5 4, 1.5 4, 1.5 2.5, 0 2.5"),
                "wall: west 2, from: south 0.7 m"));
    assertEquals(List.of("3000 12", "12 12", "12 2488", "1512 2488", "1512 3200"), turns(p));
    assertEquals(2.988 + 2.476 + 1.5 + 0.712 + ENDS, p.totals().routeM(), 1e-6);
  }

  @Test
  @Feature("angled wall")
  void anAngledWallCutsTheCorner() {
    // Corner cut over 1.5 m and 1.5 m in the north-east. 12 mm inside both walls is
    // 12 x (root 2 - 1) = 4.9706 mm short of the corners: north to 2500 - 4.97, across to 4500 -
    // 4.97, so 3988 - 2495.03 = 1492.97 of each and that times root 2 aslant.
    Plan cut = plan(house(outline("0 0, 6 0, 6 2.5, 4.5 4, 0 4"), "wall: north, from: west 3 m"));
    assertEquals(List.of("3000 12", "5988 12", "5988 2495", "4495 3988", "3000 3988"), turns(cut));
    double short1 = 0.012 * (Math.sqrt(2) - 1);
    double north = 2.5 - short1 - 0.012;
    double west = 4.5 - short1 - 3;
    double aslant = (3.988 - 2.5 + short1) * Math.sqrt(2);
    assertEquals(2.988 + north + aslant + west + ENDS, cut.totals().routeM(), 1e-5);
    // 2988 + 3976 + 2988 in the rectangle, by its corner.
    Plan square = plan(house(RECTANGLE, "wall: north, from: west 3 m"));
    assertEquals(List.of("3000 12", "5988 12", "5988 3988", "3000 3988"), turns(square));
    assertEquals(2.988 + 3.976 + 2.988 + ENDS, square.totals().routeM(), 1e-6);
  }

  @Test
  @Feature("alcove")
  void anAlcoveIsGoneRound() {
    // 600 mm deep from 1 m to 3 m in the east wall; the desk on the north wall 1 m from the east.
    // East 2988, north 1000 to 1012, in 600, north 1976, out 600, north 1000, west 988.
    String desk = "wall: north, from: east 1 m";
    Plan p = plan(house(outline("0 0, 6 0, 6 1, 6.6 1, 6.6 3, 6 3, 6 4, 0 4"), desk));
    assertEquals(
        List.of(
            "3000 12",
            "5988 12",
            "5988 1012",
            "6588 1012",
            "6588 2988",
            "5988 2988",
            "5988 3988",
            "5000 3988"),
        turns(p));
    assertEquals(2.988 + 3.976 + 2 * 0.6 + 0.988 + ENDS, p.totals().routeM(), 1e-6);
    // Without it straight past.
    Plan past = plan(house(RECTANGLE, desk));
    assertEquals(2.988 + 3.976 + 0.988 + ENDS, past.totals().routeM(), 1e-6);
  }

  private static final String CLOSET =
      "  closet: { level: main, size: 1885.7 mm x 1385.7 mm, east-of: hall, align: north, shift: 0 mm, plain: yes }\n";

  @Test
  @Feature("closet in a room")
  void aClosetInTheCornerIsEnteredByOneHole() {
    // In the bite of the L, walls of 114.3 mm (4114.3 to 6000 and 2614.3 to 4000 inside): the shelf
    // stands on its north wall, 1 m from its west one.
    String text =
        HOUSE
            .replace("SHAPE", outline("0 0, 6 0, 6 2.5, 4 2.5, 4 4, 0 4"))
            .replace("cabinet:", CLOSET + "cabinet:")
            .replace(
                "in: hall, wall: north, from: west 3 m", "in: closet, wall: north, from: west 1 m");
    WrittenHouse closet = WrittenHouse.of(text);
    Plan p = plan(closet);
    // 80 mm off the corner at 6000 and 150 above the floor, through both boards of the south wall.
    Plan.PlannedHole hole = p.holes().get(0);
    assertEquals(1, p.holes().size());
    assertEquals("wall, both boards", hole.kind());
    assertEquals(5_920_000_000L, hole.at().x());
    // set-up 4, board 1, void 1, board 1, seal 2
    assertEquals(9, hole.minutes(), 1e-9);
    // East 2988, north 2476, back 68 to the hole, up 90, 12 to the wall, through 114.3, 12 off it,
    // up 300 to where bays of stud could be opened, on 68 to the corner, north 3988 - 2626.3, west
    // 5988 - 5114.3, three times 12 to the wall and off it where a bay would be opened, and up 550
    // to
    // the height of the shelf there.
    double hall = 2.988 + 2.476 + 0.068 + 0.09 + 0.012;
    double inside = 0.012 + 0.3 + 0.068 + 1.3617 + 0.8737 + 3 * 0.024 + 0.55;
    assertEquals(hall + 0.1143 + inside + ENDS - 0.94, p.totals().routeM(), 1e-6);
    // With none of the two walls bored there is no way in.
    String[] bored =
        closet.hollows().sites().stream()
            .filter(s -> s.id().startsWith("main/closet-hall/"))
            .map(Site::id)
            .toArray(String[]::new);
    Plan none = closet.plan(bans(bored));
    assertEquals(List.of("desk/cat6-1"), none.unrouted().stream().map(Plan.Unrouted::id).toList());
  }

  private static String[] bans(String... sites) {
    return Stream.concat(Stream.of("outside"), Stream.of(sites)).toArray(String[]::new);
  }

  /**
   * The cabinet 400 mm from a corner and the desk 300 mm beyond it, both at 1 m, in each of the
   * four corners: cable goes round the corner at that height, 400 - 12 and 300 - 12 mm, wherever
   * the line round the room begins.
   */
  @Test
  @Feature("surface line round the corner where it begins")
  void roundEveryCornerAtItsOwnHeight() {
    for (String corner : List.of("south west", "south east", "north west", "north east")) {
      String level = corner.split(" ")[0];
      String upright = corner.split(" ")[1];
      String text =
          HOUSE
              .replace("SHAPE", RECTANGLE)
              .replace("wall: south, from: west 3 m", "wall: %s, from: %s 0.4 m")
              .replace("wall: north, from: west 3 m", "wall: %s, from: %s 0.3 m")
              .formatted(level, upright, upright, level);
      Plan p = plan(WrittenHouse.of(text));
      assertEquals(0.388 + 0.288 + 0.06915, p.totals().routeM(), 1e-6, corner);
    }
  }
}
