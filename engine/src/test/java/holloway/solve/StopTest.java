package holloway.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.plan.PlanJson;
import holloway.request.Profile;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoubleSupplier;
import org.junit.jupiter.api.Test;

/** Ending early: what is handed on stays proven, and says if time ended it. */
class StopTest {
  private static final HouseLike HOUSE = new HouseLike(3, 8, 8, 3, Profile.LEAST_WORK);

  private static Solved solve(Stop stop) {
    return solve(HOUSE, Budget.QUICK, stop, Progress.SILENT);
  }

  private static Solved solve(HouseLike h, Budget budget, Stop stop, Progress progress) {
    return JointPlanner.solve(h.graph, h.order, budget, progress, stop);
  }

  /** Time that is up from the given question on; no clock, so that the test is the same always. */
  private static DoubleSupplier upAfter(int asked) {
    AtomicInteger asks = new AtomicInteger();
    return () -> asks.incrementAndGet() / (asked + 1.0);
  }

  private static long bound(Solved s) {
    return s.plan().totals().bound();
  }

  @Test
  void timeThatSufficesProvesAsMuchEachTime() {
    for (int steps : new int[] {16, 400}) {
      Budget some = new Budget(2, 60, steps, Budget.QUICK.looks());
      Solved without = solve(HOUSE, some, Stop.NEVER, Progress.SILENT);
      Solved with = solve(HOUSE, some, new Stop(0, () -> 0), Progress.SILENT);
      Solved again = solve(HOUSE, some, new Stop(0, () -> 0.1), Progress.SILENT);
      assertFalse(with.cut());
      assertEquals(PlanJson.write(with.plan()), PlanJson.write(again.plan()), steps + " steps");
      assertEquals(with.bound(), again.bound(), steps + " steps");
      assertEquals(without.bound(), with.bound(), steps + " steps");
      assertEquals(without.plan().totals(), with.plan().totals());
    }
  }

  /** One look at the graph is in any case, and what it proves holds for every set of zones. */
  @Test
  void timeThatIsUpAtOnceStillProvesSomething() {
    Solved s = solve(new Stop(0, () -> 1));
    assertTrue(s.cut());
    assertTrue(bound(s) >= 0.6 * s.plan().totals().objective(), "gap " + s.plan().totals().gap());
  }

  @Test
  void whereverTimeEndsItTheBoundHolds() {
    long whole = bound(solve(Stop.NEVER));
    int least = Integer.MAX_VALUE;
    for (int asked : new int[] {0, 1, 5, 30, 70, 75, 80, 90}) {
      Solved s = solve(new Stop(0, upAfter(asked)));
      String which = "after " + asked + " questions";
      assertTrue(s.cut(), which);
      assertEquals(0, s.plan().unrouted().size(), which);
      assertEquals(Optional.empty(), Certified.check(HOUSE.graph, HOUSE.order, s).refusal(), which);
      assertTrue(0 < bound(s) && bound(s) <= s.plan().totals().objective(), which);
      least = bound(s) < whole ? asked : least;
    }
    assertTrue(least < Integer.MAX_VALUE, "nothing was cut off that would have proved more");
  }

  @Test
  void nearEnoughEndsItTheSameEachTime() {
    double[] gaps = new double[2];
    int[] steps = new int[2];
    for (int i = 0; i < 2; i++) {
      int at = i;
      Progress count = (what, done, of) -> steps[at] += what.startsWith("proving") ? 1 : 0;
      Stop stop = new Stop(i == 0 ? 0.2 : 0, Stop.ENDLESS);
      Solved s = solve(HOUSE, Budget.USUAL, stop, count);
      gaps[i] = s.plan().totals().gap();
      assertFalse(s.cut());
      assertEquals(Optional.empty(), Certified.check(HOUSE.graph, HOUSE.order, s).refusal());
      Solved again = solve(HOUSE, Budget.USUAL, stop, Progress.SILENT);
      assertEquals(PlanJson.write(s.plan()), PlanJson.write(again.plan()));
    }
    assertTrue(gaps[0] <= 0.2 && gaps[1] < gaps[0], gaps[0] + " and " + gaps[1]);
    assertTrue(steps[0] < steps[1], steps[0] + " and " + steps[1]);
  }

  /** A tenth of the rounds is tried first; where that is near enough nothing more is done. */
  @Test
  void nearEnoughIsTriedBeforeTheWholePlanSearch() {
    int[] rounds = new int[2];
    for (int i = 0; i < 2; i++) {
      int at = i;
      Progress count = (what, done, of) -> rounds[at] += what.startsWith("improving") ? 1 : 0;
      solve(HOUSE, Budget.USUAL, new Stop(i == 0 ? 0.2 : 0, Stop.ENDLESS), count);
    }
    assertTrue(rounds[0] * 4 < rounds[1], rounds[0] + " of " + rounds[1]);
  }

  @Test
  void neverEndingEarlyIsAsIfNothingWereSaid() {
    Solved without = JointPlanner.solve(HOUSE.graph, HOUSE.order, Budget.QUICK, Progress.SILENT);
    Solved never = solve(Stop.NEVER);
    assertEquals(PlanJson.write(without.plan()), PlanJson.write(never.plan()));
    assertEquals(without.bound(), never.bound());
    assertFalse(never.cut());
  }

  @Test
  void theBoundClosesInOnThePlan() {
    long[] last = {0, Long.MAX_VALUE};
    int[] rises = {0};
    Progress heard =
        new Progress() {
          @Override
          public void at(String what, int done, int of) {}

          @Override
          public void closing(long price, long bound) {
            assertTrue(last[0] <= bound && price <= last[1] && bound <= price);
            rises[0] += bound > last[0] ? 1 : 0;
            last[0] = bound;
            last[1] = price;
          }
        };
    Solved s = solve(HOUSE, Budget.QUICK, new Stop(0, () -> 0), heard);
    assertTrue(rises[0] > 1, rises[0] + " rises");
    assertEquals(bound(s), last[0]);
    assertEquals(s.plan().totals().objective(), last[1]);
  }

  @Test
  void aGapIsAPart() {
    assertThrows(IllegalArgumentException.class, () -> new Stop(1, Stop.ENDLESS));
    assertThrows(IllegalArgumentException.class, () -> new Stop(-0.1, Stop.ENDLESS));
  }
}
