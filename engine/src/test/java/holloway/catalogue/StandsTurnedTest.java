package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.check.Referee;
import holloway.geometry.Point3;
import holloway.geometry.SiteFrame;
import holloway.geometry.Turn;
import holloway.pipeline.InputTrouble;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import holloway.plan.PlanJson;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Two rooms of 4 m by 4 m and 6 m by 4 m under one attic, as they are drawn on a site's grid off
 * which the house stands 30 degrees, corners to the millimetre: 4000 cos 30 = 3464.1, 6000 cos 30 =
 * 5196.2, 4000 sin 30 = 2000.
 */
@Feature("house that stands turned")
class StandsTurnedTest {
  private static final String HOUSE =
      """
      house: Askew House
      place: us
      built: 1990
      outer-walls: { studs: 2x4, every: 16 in }
      inner-walls: { studs: 2x4, every: 16 in }
      levels: { main: { ceiling-height: 8 ft, floor: slab } }
      rooms:
        store: { level: main, STORE, plain: yes }
        den: { level: main, DEN, east-of: store, align: south }
      roof:
        - { over: main, shape: gable, ridge: east-west, pitch: 8/12, eaves: 16 in, frame: trusses, chord: 2x4,
            every: 24 in, insulation: 10 in loose, hatch: { in: store, at: [west 1 m, south 1 m], size: 22 in x 30 in } }
      cabinet: { in: store, wall: west, from: south 2 m, height: 1.5 m }
      outlets:
        - { name: desk, in: den, wall: west, from: south 2 m, height: 400 mm, cables: [cat6] }
      """;

  private static final WrittenHouse STRAIGHT =
      WrittenHouse.of(HOUSE.replace("STORE", "size: 4 m x 4 m").replace("DEN", "size: 6 m x 4 m"));

  private static final String ON_GRID =
      HOUSE
          .replace("STORE", outline("0 0, 3464 2000, 1464 5464, -2000 3464"))
          .replace("DEN", outline("0 0, 5196 3000, 3196 6464, -2000 3464"));

  private static String outline(String corners) {
    String each = corners.replaceAll("([0-9-]+) ([0-9-]+),?", "[$1 mm, $2 mm],");
    return "outline: [" + each.substring(0, each.length() - 1) + "]";
  }

  private static Plan plan(WrittenHouse house) {
    Plan p = house.plan("surface", "outside");
    assertEquals(List.of(), p.unrouted());
    return p;
  }

  private static List<String> ids(Plan p) {
    return p.runs().get(0).steps().stream().map(Plan.PlanStep::id).toList();
  }

  /** Both ends and every hole; between them a cable may lie on either side of a truss. */
  private static List<Point3> points(Plan p) {
    List<Plan.PlanStep> steps = p.runs().get(0).steps();
    List<Point3> last = steps.get(steps.size() - 1).path();
    return Stream.concat(
            p.holes().stream().flatMap(h -> h.axis().stream()),
            Stream.of(steps.get(0).path().get(0), last.get(last.size() - 1)))
        .toList();
  }

  @Test
  void theSameHolesAndEveryPointTurned() {
    Plan straight = plan(STRAIGHT);
    Plan turned = plan(WrittenHouse.of(ON_GRID));
    assertEquals(2, straight.holes().size());
    assertEquals(ids(straight), ids(turned));
    assertEquals(straight.totals().routeM(), turned.totals().routeM(), 0.002);
    assertEquals(straight.totals().minutes(), turned.totals().minutes(), 0.01);
    assertEquals(30, turned.site().turn().degrees(), 0.01);
    // The south-west corner of the box around both is 4000 sin 30 west of the store's own.
    assertEquals(2_000_000_000L, turned.site().east(), 1_000_000);
    assertEquals(0, turned.site().north(), 1_000_000);
    String json = PlanJson.write(turned);
    for (int i = 0; i < points(straight).size(); i++) {
      Point3 p = points(straight).get(i);
      double x = p.x() * Math.sqrt(0.75) - p.y() * 0.5 + 2e9;
      double y = p.x() * 0.5 + p.y() * Math.sqrt(0.75);
      Point3 q = turned.site().toSite(points(turned).get(i));
      assertEquals(x, q.x(), 1e6, "x of point " + i);
      assertEquals(y, q.y(), 1e6, "y of point " + i);

      assertTrue(json.contains("[%.1f, %.1f, ".formatted(q.x() / 1e6, q.y() / 1e6)), q::toString);
    }
  }

  @Test
  void theRefereeKnowsHowItStands() {
    WrittenHouse house = WrittenHouse.of(ON_GRID);
    Plan p = plan(house);
    String json = PlanJson.write(p);
    for (String other : List.of("\"degrees\": 31.0", "\"degrees\": -30.0", "\"degrees\": 0.0")) {
      Plan spoiled = PlanJson.read(json.replaceFirst("\"degrees\": [0-9.]+", other));
      List<String> refusals =
          Referee.check(spoiled, house.hollows(), house.request()).refusals().stream()
              .map(Object::toString)
              .toList();
      assertTrue(refusals.get(0).contains("its coordinates are"), refusals::toString);
    }
    // A leg that begins elsewhere is told of by the coordinates that the plan file has.
    var step = p.runs().get(0).steps().get(0);
    String first = "[[0-9.]+, [0-9.]+, 1500.0]";
    String moved = json.replaceFirst("\\" + first, "[1234.5, 678.9, 1500.0]");
    assertTrue(step.path().get(0).z() == 1_500_000_000L && !moved.equals(json));
    assertTrue(
        Referee.check(PlanJson.read(moved), house.hollows(), house.request())
            .refusals()
            .toString()
            .contains("[1234.5, 678.9, 1500.0]"));
    assertEquals(
        new SiteFrame(Turn.NONE, 0, 0), PlanJson.read(PlanJson.write(plan(STRAIGHT))).site());
  }

  @Test
  void howItStandsMayBeSaid() {
    String said = ON_GRID.replace("built: 1990", "built: 1990\nturned: 30 deg counter-clockwise");
    assertEquals(ids(plan(STRAIGHT)), ids(plan(WrittenHouse.of(said))));
    // With the other way round the corners would lie 60 degrees off the house's own walls.
    String wrong = said.replace("counter-clockwise", "clockwise");
    assertThrows(InputTrouble.class, () -> WrittenHouse.of(wrong));
    // Rooms by their sizes are in the house's own frame whatever is said.
    String sizes = said.replaceAll("outline: .*?\\]\\]", "size: 4 m x 4 m");
    assertEquals(30e9, WrittenHouse.of(sizes).placed().site().turn().nanoDegrees());
  }
}
