package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.check.Referee;
import holloway.pipeline.Minutes;
import holloway.pipeline.TwoStoreys;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import holloway.schedule.Step;
import holloway.schedule.WorkPlace;
import holloway.schedule.WorkPlanner;
import holloway.takeoff.TakeOff;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Boxes outside: the provider's feed straight through the garage wall, a camera upstairs. */
@Feature("feed from outside")
class OutsideFeedTest {
  @Test
  void oneHoleThroughTheOuterWall() {
    Plan p =
        WrittenHouse.of(
                TwoStoreys.with(
                    "{ name: desk, in: office, wall: east, from: south 6 ft, height: 16 in, cables: [cat6] }",
                    "{ name: box, outside: garage south, from: west 6 ft, height: 4 ft, cables: [outdoor-cat6], feed: yes }"))
            .plan();
    assertEquals(1, p.totals().holes());
    assertEquals("outer wall", p.holes().get(0).kind());
    // (4 + cladding 5 + void 1 + board 1) x 1.0 from the garage, seal 2
    assertEquals(13.0, p.holes().get(0).minutes(), 1e-9);
  }

  private static WrittenHouse camera(String height) {
    return WrittenHouse.of(
        TwoStoreys.with(
            "{ name: desk, in: office, wall: east, from: south 6 ft, height: 16 in, cables: [cat6] }",
            "{ name: camera, outside: office south, from: west 6 ft, height: "
                + height
                + ", cables: [outdoor-cat6] }"));
  }

  /**
   * 97 in, board 1/2 in, joists 9-1/4 in and floor 18.3 mm put the upper floor 2.730 m up; 6 ft
   * over it is 4.56 m, and 2.4 m is what hands reach from the ground.
   */
  @Test
  void aBoxUpstairsIsFittedFromALadder() {
    WrittenHouse house = camera("6 ft");
    Plan p = house.plan();
    assertEquals(List.of("ladder"), p.totals().zones());
    assertEquals(15, Minutes.work(p, "set-up/ladder"), 0.001);
    Plan without = Spoiled.without(p, "set-up/ladder");
    List<String> says =
        Referee.check(without, house.hollows(), house.request()).refusals().stream()
            .map(Object::toString)
            .filter(r -> r.contains("camera is fitted from a ladder"))
            .toList();
    assertEquals(1, says.size(), says::toString);
    Step cut =
        WorkPlanner.of(
                TakeOff.of(p, house.request(), house.placed()),
                house.hollows(),
                house.request(),
                Map.of())
            .steps()
            .stream()
            .filter(s -> s.subject().equals("camera/cut-out"))
            .findFirst()
            .orElseThrow();
    assertEquals(WorkPlace.Kind.LADDER, cut.at().kind());
  }

  /** In the garage's own wall hands reach it. */
  @Test
  void aBoxDownstairsIsNot() {
    Plan p =
        WrittenHouse.of(
                TwoStoreys.with(
                    "{ name: desk, in: office, wall: east, from: south 6 ft, height: 16 in, cables: [cat6] }",
                    "{ name: camera, outside: garage south, from: west 6 ft, height: 7 ft 10 in, cables: [outdoor-cat6] }"))
            .plan();
    // 94 in are 2.388 m.
    assertTrue(
        p.totals().zones().stream().noneMatch("ladder"::equals), p.totals().zones()::toString);
  }
}
