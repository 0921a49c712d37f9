package holloway.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.catalog.Cable;
import holloway.plan.Plan;
import holloway.request.Profile;
import holloway.routing.RouteGraph;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A plan made over several spots of its cabinet is laid anew with the one spot that it chose. */
class SettlingTest {
  private static final long MINUTE = 10_000;
  private static final Order ORDER =
      new Order(
          List.of(
              new Order.Wanted("run 0", "cabinet", "outlet 0", Cable.get("cat6")),
              new Order.Wanted("run 1", "cabinet", "outlet 1", Cable.get("cat6"))),
          Profile.LEAST_WORK,
          Set.of(),
          Map.of());

  /**
   * From each spot of the cabinet a cable is laid to a hub and on to the outlets, 1 min each: from
   * the first spot through a hole of 10 min in 2 min or through one of 14 min in 3 min, from the
   * second through one of 30 min in 1 min.
   *
   * @param both the second spot is there too
   * @param holes so many of the first spot's two holes, the cheap one is left out first
   */
  private static RouteGraph house(boolean both, int holes) {
    GraphBuilder b = new GraphBuilder();
    int first = b.node(0, 0, 0);
    int second = b.node(0, 9_000, 0);
    int hub = b.node(5_000, 0, 0);
    if (holes > 1) {
      b.edge(first, hub, 2 * MINUTE, hole(b, 10));
    }
    if (holes > 0) {
      b.edge(first, hub, 3 * MINUTE, hole(b, 14));
    }
    b.edge(second, hub, MINUTE, hole(b, 30));
    for (int k = 0; k < 2; k++) {
      int outlet = b.node(6_000, 500L * k, 0);
      b.edge(hub, outlet, MINUTE);
      b.end("outlet " + k, outlet);
    }
    if (both) {
      b.end("cabinet", first, second);
    } else {
      b.end("cabinet", first);
    }
    return b.build();
  }

  private static int hole(GraphBuilder b, long minutes) {
    return b.hole(List.of(new int[] {b.bore(minutes * MINUTE)}), List.of(), OptionalLong.empty());
  }

  private static LivePlan wide() {
    LivePlan wide = LivePlan.of(house(true, 2), ORDER, Budget.QUICK, Progress.SILENT);
    // 10 + 2 (2 + 1): from the other spot it would be 30 + 2 (1 + 1).
    assertEquals(16 * MINUTE, wide.solved().plan().totals().objective());
    return wide;
  }

  private static Plan.Totals settled(RouteGraph on) {
    return wide().settledPlan(on, Progress.SILENT, Stop.NEVER).plan().totals();
  }

  @Test
  void thePathsStayWhereNothingStandsInTheirWay() {
    Plan.Totals t = settled(house(false, 2));
    assertEquals(16 * MINUTE, t.objective());
    assertEquals(16 * MINUTE, t.bound());
  }

  /** What was proven over both spots, 16 min, holds for the dearer plan. */
  @Test
  void aHoleThatIsGoneSendsThemAnotherWay() {
    Plan.Totals t = settled(house(false, 1));
    assertEquals((14 + 2 * (3 + 1)) * MINUTE, t.objective());
    assertEquals(16 * MINUTE, t.bound());
  }

  @Test
  void runsThatLoseTheirOnlyWayHaveNone() {
    Solved s = wide().settledPlan(house(false, 0), Progress.SILENT, Stop.NEVER);
    assertEquals(2, s.plan().unrouted().size());
  }

  /** The one that may be asked more has the very same plan, and a proof of its own. */
  @Test
  void itMayBeAskedMore() {
    RouteGraph on = house(false, 1);
    LivePlan live = wide().settled(on, Progress.SILENT, Stop.NEVER);
    assertEquals(
        wide().settledPlan(on, Progress.SILENT, Stop.NEVER).plan().runs(),
        live.solved().plan().runs());
    assertEquals(22 * MINUTE, live.solved().bound().bound());
    assertTrue(Certified.check(on, ORDER, live.solved()).refusal().isEmpty());
    LivePlan one = live.drop("run 1", Progress.SILENT);
    assertEquals((14 + 3 + 1) * MINUTE, one.solved().plan().totals().objective());
  }

  /** Houses large enough that a plan has holes in common: never dearer than what it began with. */
  @Test
  void theSamePlaceAgainIsNoWorse() {
    HouseLike h = new HouseLike(5, 8, 10, 3, Profile.LEAST_WORK);
    HouseLike again = new HouseLike(5, 8, 10, 3, Profile.LEAST_WORK);
    LivePlan wide = LivePlan.of(h.graph, h.order, Budget.QUICK, Progress.SILENT);
    Plan.Totals t = wide.settledPlan(again.graph, Progress.SILENT, Stop.NEVER).plan().totals();
    assertTrue(t.objective() <= wide.solved().plan().totals().objective());
    assertEquals(wide.solved().bound().bound(), t.bound());
  }
}
