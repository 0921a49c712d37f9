package holloway.pipeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.house.Fact;
import holloway.house.Side;
import holloway.house.WallSpot;
import holloway.plan.Plan;
import holloway.request.Request;
import holloway.units.Length;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The order of places of a cabinet, each thing deciding only when all before it are equal. */
class CabinetPlacesTest {
  private static WallSpot at(String room, Side side, double heightMm) {
    WallSpot spot = ToyCottage.spot(room, side);
    return new WallSpot(spot.face(), spot.along(), Fact.assumed(Length.mm(heightMm)));
  }

  private static Plan plan(double minutes, double routeM, int holes, int unrouted) {
    Plan toy = Toy.bare();
    Plan.Totals t = toy.totals();
    Plan.Unrouted none = new Plan.Unrouted("x", List.of());
    return toy.withRuns(
            toy.runs(),
            new Plan.Totals(
                t.objective(),
                t.bound(),
                t.gap(),
                minutes,
                holes,
                0,
                routeM,
                routeM,
                0,
                t.money(),
                t.currency(),
                t.zones()))
        .withUnrouted(java.util.Collections.nCopies(unrouted, none));
  }

  /** Stated in the garage; two other places in the office. The rooms of those that win. */
  private static String order(Map<Double, Plan> byHeight) {
    Request toy = Toy.request();
    Request.Cabinet cabinet =
        new Request.Cabinet(
            at("garage", Side.EAST, 1500),
            toy.cabinet().where(),
            List.of(at("office", Side.WEST, 1400), at("office", Side.WEST, 300)));
    return CabinetPlaces.ranked(
            Toy.placed(),
            toy.with(cabinet),
            r -> byHeight.get(r.cabinet().at().height().value().toMm()))
        .stream()
        .map(p -> String.valueOf(Math.round(p.at().height().value().toMm())))
        .toList()
        .toString();
  }

  @Test
  void eachThingInItsTurn() {
    Plan usual = plan(100, 30, 3, 0);
    // All equal: the garage follows the weather, at 300 mm one kneels.
    assertEquals("[1400, 300, 1500]", order(Map.of(1500.0, usual, 1400.0, usual, 300.0, usual)));
    assertEquals(
        "[1500, 1400, 300]",
        order(Map.of(1500.0, plan(99, 50, 9, 0), 1400.0, usual, 300.0, usual)));
    assertEquals(
        "[300, 1400, 1500]",
        order(Map.of(1500.0, usual, 1400.0, usual, 300.0, plan(100, 29, 9, 0))));
    assertEquals(
        "[300, 1400, 1500]",
        order(Map.of(1500.0, usual, 1400.0, usual, 300.0, plan(100, 30, 2, 0))));
    assertEquals(
        "[1400, 300, 1500]",
        order(Map.of(1500.0, plan(1, 1, 0, 1), 1400.0, usual, 300.0, usual)),
        "a run without a route is worse than any minutes");
  }

  @Test
  void onePlaceIsNoComparison() {
    InputTrouble e =
        assertThrows(
            InputTrouble.class,
            () -> CabinetPlaces.ranked(Toy.placed(), Toy.request(), r -> Toy.bare()));
    assertTrue(e.getMessage().contains("give others"), e.getMessage());
  }
}
