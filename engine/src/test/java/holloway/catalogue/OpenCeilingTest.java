package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.check.Referee;
import holloway.pipeline.TwoStoreys;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import holloway.plan.PlanJson;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Under bare joists a person stands below, lays the cable and bores the plate above from there. */
@Feature("open ceiling")
class OpenCeilingTest {
  @Test
  void thePlateIsBoredFromBelow() {
    Plan p =
        WrittenHouse.of(
                TwoStoreys.with(
                    "garage: { level: ground, size: 12 ft x 12 ft, garage: yes }",
                    "garage: { level: ground, size: 12 ft x 12 ft, garage: yes, ceiling: open }",
                    "bearing: yes",
                    "bearing: no"))
            .plan("surface", "outside");
    assertEquals(List.of(), p.unrouted());
    assertEquals(1, p.totals().holes());
    assertEquals("bottom plate", p.holes().get(0).kind());
    // (4 + plate 2.5 + subfloor 2) x 1.0 standing below, seal 2
    assertEquals(10.5, p.holes().get(0).minutes(), 1e-9);
    assertTrue(p.holes().get(0).method().contains("garage"), p.holes().get(0)::method);
  }

  /**
   * Cable that leaves a wall for the joists lies 20 mm below them. Where the tapes do not close, a
   * ceiling's height is no round figure. With the 12.7 mm of the board that is not there the joists
   * begin at 2476.54 mm; 20 mm below is 2456.54 mm, told to 0.1 mm as 2456.5 mm, and the referee
   * took what is 20.04 mm off to hang in the air.
   */
  @Test
  void aCeilingThatIsNoRoundFigure() {
    for (String height : List.of("2463.84 mm", "2463.86 mm", "8 ft 1 in")) {
      WrittenHouse house =
          WrittenHouse.of(
              TwoStoreys.with(
                  "garage: { level: ground, size: 12 ft x 12 ft, garage: yes }",
                  "garage: { level: ground, size: 12 ft x 12 ft, garage: yes, ceiling: open, plain: yes }",
                  "ground: { floor: slab, ceiling-height: 8 ft 1 in }",
                  "ground: { floor: slab, ceiling-height: " + height + " }"));
      Plan told = PlanJson.read(PlanJson.write(house.plan("outside")));
      assertTrue(WrittenHouse.way(told, "desk/cat6-1").contains("garage/surface"));
      assertEquals(
          List.of(),
          Referee.check(told, house.hollows(), house.request()).refusals().stream()
              .map(Object::toString)
              .toList(),
          height);
    }
  }

  /** The joists turn over the middle of one cellar: the cable goes on below them. */
  @Test
  @Feature("joists that turn over an open ceiling")
  void fromUnderOneFloorToUnderTheOther() {
    for (String side : List.of("west", "east")) {
      WrittenHouse house = WrittenHouse.of(turning(side));
      Plan p = house.plan("outside", "surface");
      assertEquals(List.of(), p.unrouted(), side);
      List<String> way = WrittenHouse.way(p, "desk/cat6-1");
      assertTrue(way.contains("under/store") && way.contains("under/store/2"), way::toString);
      // Down through one floor beside the cabinet, up through the other beside the desk.
      assertEquals(2, p.totals().holes(), side);
      // Each floor's space is its own: the larger is named like the room, whichever comes first.
      double large = area(house, "under/store");
      double small = area(house, "under/store/2");
      assertTrue(large > small && small > 10e6, large + " and " + small);
    }
  }

  /**
   * A beam that hangs below the joists where they meet leaves no way past it: along the wall, and
   * under the beam.
   */
  @Test
  @Feature("joists that turn over an open ceiling")
  void notPastABeamThatHangsBetween() {
    String beam =
        turning("west")
            .replace(
                "cabinet:",
                "beams:\n  - { beam: girder, in: store, run: north-south, from: west 2960 mm, width: 200 mm, drop: 200 mm, depth: 200 mm, made: timber }\ncabinet:");
    List<String> under =
        WrittenHouse.way(WrittenHouse.of(beam).plan("outside", "surface"), "desk/cat6-1");
    assertTrue(under.contains("store/surface"), under::toString);
    assertTrue(under.stream().noneMatch(s -> s.contains("/on-to-")), under::toString);
    List<String> on =
        WrittenHouse.way(
            WrittenHouse.of(turning("west")).plan("outside", "surface"), "desk/cat6-1");
    assertTrue(on.stream().anyMatch(s -> s.contains("/on-to-")), on::toString);
  }

  private static double area(WrittenHouse house, String id) {
    return house.hollows().hollows().stream()
        .filter(h -> h.id().equals(id))
        .mapToDouble(h -> Math.abs(h.area().orElseThrow().signedAreaMm2()))
        .sum();
  }

  /** The study with joists east-west at one end, the den with joists north-south at the other. */
  private static String turning(String study) {
    String beside = study.equals("west") ? "east-of" : "west-of";
    String desk = study.equals("west") ? "east" : "west";
    return """
        house: Turning Toy
        place: us
        built: 1994
        outer-walls: { studs: 2x4, every: 16 in, fill: empty }
        inner-walls: { studs: 2x4, every: 16 in }
        levels:
          cellar: { floor: slab, ceiling-height: 8 ft }
          main: { above: cellar, floor: { joists: 2x10, every: 16 in, run: east-west }, ceiling-height: 8 ft }
        rooms:
          store: { level: cellar, size: 8 m x 4 m, plain: yes, ceiling: open }
          study: { level: main, size: 3 m x 4 m, above: store, align: south-STUDY, tied: measured }
          den: { level: main, size: 4885.7 mm x 4 m, BESIDE: study, align: south, floor: { joists: 2x10, every: 16 in, run: north-south } }
        cabinet: { in: study, wall: STUDY, from: south 2 m, height: 400 mm }
        outlets:
          - { name: desk, in: den, wall: north, from: DESK 2 m, height: 400 mm, cables: [cat6] }
        """
        .replace("STUDY", study)
        .replace("BESIDE", beside)
        .replace("DESK", desk);
  }
}
