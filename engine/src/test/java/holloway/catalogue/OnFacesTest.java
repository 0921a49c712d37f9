package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.geometry.Point3;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * Cable in sight lies on a face of the room all the way: a plan that takes a short cut through the
 * air is refused.
 */
@Feature("cable in sight is held all the way")
class OnFacesTest {
  /** 6 m by 4 m, an alcove 600 mm deep from 1 m to 3 m in the east wall. */
  private static final String ALCOVE =
      """
      house: Air Toy
      place: us
      built: 1990
      levels: { main: { ceiling-height: 2.5 m, floor: slab } }
      rooms:
        hall: { level: main, outline: [[0 m, 0 m], [6 m, 0 m], [6 m, 1 m], [6.6 m, 1 m],
            [6.6 m, 3 m], [6 m, 3 m], [6 m, 4 m], [0 m, 4 m]], plain: yes }
      cabinet: { in: hall, wall: south, from: west 3 m, height: 1 m }
      outlets:
        - { name: desk, in: hall, wall: north, from: east 1.1 m, height: 1 m, cables: [cat6] }
      """;

  /** The plan with its cable in sight on another way between the same two places. */
  private static Plan led(Plan p, UnaryOperator<List<Point3>> change) {
    List<Plan.PlannedRun> runs = new ArrayList<>();
    for (Plan.PlannedRun r : p.runs()) {
      List<Plan.PlanStep> steps = new ArrayList<>();
      for (Plan.PlanStep s : r.steps()) {
        steps.add(s.id().endsWith("/surface") ? along(s, change.apply(s.path())) : s);
      }
      runs.add(
          new Plan.PlannedRun(r.id(), r.from(), r.to(), r.cable(), r.routeM(), r.cableM(), steps));
    }
    return p.withRuns(runs, p.totals());
  }

  private static Plan.PlanStep along(Plan.PlanStep s, List<Point3> path) {
    return new Plan.PlanStep(
        s.kind(), s.id(), s.hollow(), s.label(), path, s.m(), s.feed(), s.fish(), s.minutes());
  }

  private static Point3 mm(double x, double y, double z) {
    return new Point3(Math.round(x * 1e6), Math.round(y * 1e6), Math.round(z * 1e6));
  }

  private static List<Point3> between(List<Point3> path, Point3... inside) {
    List<Point3> out = new ArrayList<>(List.of(path.get(0)));
    out.addAll(List.of(inside));
    out.add(path.get(path.size() - 1));
    return out;
  }

  private static final WrittenHouse HOUSE = WrittenHouse.of(ALCOVE);

  private static Plan sound() {
    Plan p = HOUSE.plan("outside");
    assertEquals(List.of(), p.unrouted());
    return p;
  }

  private static String said(Plan p, WrittenHouse house) {
    return Spoiled.refused(p, house);
  }

  private static void hangs(Plan p, WrittenHouse house) {
    assertTrue(said(p, house).contains("hangs in the air"), () -> said(p, house));
  }

  private static void held(Plan p, WrittenHouse house) {
    assertTrue(!said(p, house).contains("hangs in the air"), () -> said(p, house));
  }

  @Test
  void notOverAnAlcovesMouth() {
    Plan p = sound();
    held(p, HOUSE);
    // Along the skirting, past the mouth at 1 m to 3 m where the outline turns in.
    hangs(led(p, path -> path.stream().filter(q -> q.x() < 6_000_000_000L).toList()), HOUSE);
  }

  @Test
  void notAslantThroughTheRoom() {
    hangs(led(sound(), path -> between(path)), HOUSE);
  }

  @Test
  void notOverTheFloor() {
    // Down the south wall, over the open floor, up the north wall.
    Plan p = sound();
    double x0 = start(p).x() / 1e6;
    double x1 = end(p).x() / 1e6;
    Plan over =
        led(
            p,
            path ->
                between(
                    path, mm(x0, 12, 12), mm(x0, 2000, 12), mm(x1, 2000, 12), mm(x1, 3988, 12)));
    hangs(over, HOUSE);
    // Beside the wall it may, to a hole there: 150 mm and no more.
    held(led(p, path -> aside(path, 150)), HOUSE);
    hangs(led(p, path -> aside(path, 152)), HOUSE);
  }

  /** Out over the floor and back to the wall, before the way goes on as it was. */
  private static List<Point3> aside(List<Point3> path, double out) {
    double x = path.get(0).x() / 1e6;
    List<Point3> all = new ArrayList<>(path);
    all.addAll(1, List.of(mm(x, 12, 12), mm(x, out, 12), mm(x, 12, 12)));
    return all;
  }

  @Test
  void overTheCeilingItMay() {
    Plan p = sound();
    double x0 = start(p).x() / 1e6;
    double x1 = end(p).x() / 1e6;
    held(led(p, path -> between(path, ceiling(x0, x1, 12))), HOUSE);
    // A hand's width below it is no ceiling.
    hangs(led(p, path -> between(path, ceiling(x0, x1, 80))), HOUSE);
    // As far off as a clip holds it, give or take a millimetre, and a little more.
    held(led(p, path -> between(path, ceiling(x0, x1, 20))), HOUSE);
    hangs(led(p, path -> between(path, ceiling(x0, x1, 22))), HOUSE);
  }

  private static Point3[] ceiling(double x0, double x1, double below) {
    double z = 2500 - below;
    return new Point3[] {mm(x0, 12, z), mm(x0, 2000, z), mm(x1, 2000, z), mm(x1, 3988, z)};
  }

  @Test
  void notOverADoorway() {
    String door =
        ALCOVE
            .replace("from: east 1.1 m", "from: west 3 m")
            .replace(
                "cabinet:",
                "openings:\n  - { door, side: hall west, from: south 1 m, width: 900 mm }\n"
                    + "  - { window, side: hall east 1, from: south 300 mm, width: 600 mm, sill: 600"
                    + " mm, head: 1.8 m }\ncabinet:");
    WrittenHouse house = WrittenHouse.of(door);
    Plan p = house.plan("outside");
    // By the west wall through the doorway, or over it.
    hangs(led(p, path -> between(path, west(60))), house);
    held(led(p, path -> between(path, west(2200))), house);
    // The east wall's window is 600 to 1800 mm high: over it and under it, not across it.
    hangs(led(p, path -> between(path, east(1200))), house);
    held(led(p, path -> between(path, east(400))), house);
  }

  @Test
  void thePlannerGoesRoundAWindow() {
    // Two places 800 mm apart on the east wall, a window of 600 mm between them at their height;
    // and one straight over the window. Straight from one to the other it would be 0.8 m.
    String window =
        ALCOVE
            .replace("[6 m, 1 m], [6.6 m, 1 m],", "")
            .replace("[6.6 m, 3 m], [6 m, 3 m],", "")
            .replace(
                "cabinet: { in: hall, wall: south, from: west 3 m",
                "openings:\n  - { window, side: hall east, from: south 1.5 m, width: 600 mm, sill:"
                    + " 600 mm, head: 1.8 m }\ncabinet: { in: hall, wall: east, from: south 1.4 m");
    for (String desk :
        List.of("from: south 2.2 m, height: 1 m", "from: south 1.8 m, height: 2.1 m")) {
      WrittenHouse house =
          WrittenHouse.of(
              window.replace("wall: north, from: east 1.1 m, height: 1 m", "wall: east, " + desk));
      Plan p = house.plan("outside");
      assertEquals(List.of(), p.unrouted());
      assertTrue(p.totals().routeM() > 1.5, () -> p.totals().toString());
    }
  }

  @Test
  void anOutletOverADoorIsReachedFromAbove() {
    String door =
        ALCOVE
            .replace(
                "wall: north, from: east 1.1 m, height: 1 m",
                "wall: west, from: south 1.4 m, height: 2.3 m")
            .replace(
                "cabinet:",
                "openings:\n  - { door, side: hall west, from: south 1 m, width: 900 mm }\ncabinet:");
    Plan p = WrittenHouse.of(door).plan("outside");
    assertEquals(List.of(), p.unrouted());
    assertTrue(
        surface(p).stream()
            .noneMatch(q -> q.x() < 20_000_000 && q.z() < 2_000_000_000L && q.y() > 1_060_000_000L),
        () -> surface(p).toString());
  }

  private static Point3[] west(double z) {
    return new Point3[] {mm(3000, 12, z), mm(12, 12, z), mm(12, 3988, z), mm(3000, 3988, z)};
  }

  private static Point3[] east(double z) {
    return new Point3[] {
      mm(3000, 12, z),
      mm(5988, 12, z),
      mm(5988, 1012, z),
      mm(6588, 1012, z),
      mm(6588, 2988, z),
      mm(5988, 2988, z),
      mm(5988, 3988, z),
      mm(3000, 3988, z)
    };
  }

  private static Point3 start(Plan p) {
    return surface(p).get(0);
  }

  private static Point3 end(Plan p) {
    List<Point3> path = surface(p);
    return path.get(path.size() - 1);
  }

  private static List<Point3> surface(Plan p) {
    return p.runs().get(0).steps().stream()
        .filter(s -> s.id().endsWith("/surface"))
        .findFirst()
        .orElseThrow()
        .path();
  }
}
