package holloway.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.request.Profile;
import holloway.support.RandomHouseText;
import holloway.support.StagedPlan;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Changes answered from an old state against the same questions answered from nothing: the plan
 * within 1 %, the bound exact, accepted by the checker and within 1 %.
 */
class LivePlanTest {
  private static final List<String> SAMPLES = List.of("alder-lane", "plumb-corner", "tin-street");

  /** So many random houses, and all samples; see the profile {@code bench} in DEVELOPERS.md. */
  private static final int MORE = Integer.getInteger("holloway.live", 0);

  @TempDir Path folder;

  @Test
  void changesOfSmallGraphs() {
    for (long seed = 1; seed <= 6; seed++) {
      RandomGraph h = new RandomGraph(seed, 25, 50, 8, Profile.values()[(int) (seed % 3)]);
      LiveChanges changes = new LiveChanges(h.graph, h.order, Budget.QUICK);
      changes.series();
      holds("seed " + seed, changes);
    }
  }

  @Test
  void changesOfASample() {
    LiveChanges changes = of(Path.of("../samples/quince-ranch.yaml"));
    if (MORE > 0) {
      changes.series();
    } else {
      changes.few();
    }
    holds("quince-ranch", changes);
  }

  @Test
  void changesOfMoreHouses() throws IOException {
    for (String name : MORE > 0 ? SAMPLES : List.<String>of()) {
      LiveChanges changes = of(Path.of("../samples", name + ".yaml"));
      changes.series();
      holds(name, changes);
    }
    for (long seed = 1; seed <= MORE; seed++) {
      Path file = folder.resolve("random-" + seed + ".yaml");
      Files.writeString(file, RandomHouseText.of(RandomHouseText.Shape.of(seed)));
      LiveChanges changes = of(file);
      changes.series();
      holds("random house " + seed, changes);
    }
  }

  private static LiveChanges of(Path file) {
    StagedPlan house = new StagedPlan(file);
    return new LiveChanges(house.routed.graph(), house.order(), Budget.QUICK);
  }

  @Test
  void fromNothingItIsTheJointPlan() {
    RandomGraph h = new RandomGraph(1, 25, 50, 8, Profile.LEAST_WORK);
    LivePlan live = LivePlan.of(h.graph, h.order, Budget.QUICK, Progress.SILENT);
    Solved cold = JointPlanner.solve(h.graph, h.order, Budget.QUICK, Progress.SILENT);
    assertEquals(cold.plan(), live.solved().plan());
    assertEquals(cold.bound(), live.solved().bound());
  }

  @Test
  void whatIsUndoneIsTheOldAnswer() {
    RandomGraph h = new RandomGraph(1, 25, 50, 8, Profile.LEAST_WORK);
    LivePlan live = LivePlan.of(h.graph, h.order, Budget.QUICK, Progress.SILENT);
    String hole = live.solved().plan().holes().get(0).id();
    LivePlan without = live.forbid(hole, Progress.SILENT);
    assertTrue(without.solved().plan().holes().stream().noneMatch(x -> x.id().equals(hole)));
    assertNotSame(live, without);
    assertSame(live, without.allow(hole, Progress.SILENT));
  }

  /** Time that is up from the given question on; no clock, so that the test is the same always. */
  private static Stop after(int asked) {
    AtomicInteger asks = new AtomicInteger();
    return new Stop(0, () -> asks.incrementAndGet() / (asked + 1.0));
  }

  @Test
  void endedEarlyItIsTheJointPlanThatEndsEarly() {
    HouseLike h = new HouseLike(3, 8, 8, 3, Profile.LEAST_WORK);
    List<Supplier<Stop>> stops = List.of(() -> new Stop(0.2, Stop.ENDLESS), () -> after(30));
    for (Supplier<Stop> stop : stops) {
      Solved live =
          LivePlan.of(h.graph, h.order, Budget.QUICK, Progress.SILENT, stop.get()).solved();
      Solved cold = JointPlanner.solve(h.graph, h.order, Budget.QUICK, Progress.SILENT, stop.get());
      assertEquals(cold.plan(), live.plan());
      assertEquals(cold.bound(), live.bound());
      assertEquals(cold.cut(), live.cut());
    }
  }

  /** Wherever a change is ended, every run has its way, what is proven holds, and it says so. */
  @Test
  void aChangeThatTimeEndsIsStillProven() {
    HouseLike h = new HouseLike(3, 8, 8, 3, Profile.LEAST_WORK);
    LivePlan live = LivePlan.of(h.graph, h.order, Budget.QUICK, Progress.SILENT);
    String hole = live.solved().plan().holes().get(0).id();
    Order without = h.order.withBans(List.of(hole));
    for (int asked : new int[] {0, 2, 10}) {
      LivePlan next = live.ask(h.graph, without, Progress.SILENT, after(asked));
      Solved s = next.solved();
      String which = "after " + asked + " questions";
      assertTrue(s.cut() && s.plan().totals().cutByTime(), which);
      assertEquals(List.of(), s.plan().unrouted(), which);
      assertTrue(s.plan().holes().stream().noneMatch(x -> x.id().equals(hole)), which);
      assertTrue(s.bound().bound() <= s.plan().totals().objective(), which);
      assertEquals(Optional.empty(), Certified.check(h.graph, without, s).refusal(), which);
      Solved back = next.ask(h.graph, h.order, Progress.SILENT, after(0)).solved();
      assertSame(live.solved(), back, "what is known already needs no time");
    }
  }

  /** Where a fifth is near enough, a change takes fewer steps of the proof, the same each time. */
  @Test
  void nearEnoughEndsAChange() {
    HouseLike h = new HouseLike(3, 8, 8, 3, Profile.LEAST_WORK);
    LivePlan live = LivePlan.of(h.graph, h.order, Budget.QUICK, Progress.SILENT);
    Order without = h.order.withBans(List.of(live.solved().plan().holes().get(0).id()));
    int[] steps = new int[2];
    List<Solved> answers = new ArrayList<>();
    for (int i = 0; i < 2; i++) {
      int at = i;
      Progress count = (what, done, of) -> steps[at] += what.startsWith("proving") ? 1 : 0;
      Stop stop = new Stop(i == 0 ? 0.2 : 0, Stop.ENDLESS);
      answers.add(live.ask(h.graph, without, count, stop).solved());
      assertEquals(
          answers.get(i).plan(), live.ask(h.graph, without, Progress.SILENT, stop).solved().plan());
    }
    assertTrue(answers.get(0).plan().totals().gap() <= 0.2);
    assertTrue(steps[0] < steps[1], steps[0] + " and " + steps[1]);
  }

  private static void holds(String where, LiveChanges changes) {
    double warm = 0;
    double cold = 0;
    int fromNothing = 0;
    List<String> each = new ArrayList<>();
    for (LiveChanges.Step s : changes.steps()) {
      String at = where + ", " + s.name() + ": ";
      long costs = s.warm().plan().totals().objective();
      long anew = s.cold().plan().totals().objective();
      assertEquals(s.cold().plan().unrouted(), s.warm().plan().unrouted(), at + "unrouted");
      assertTrue(costs <= 1.01 * anew, at + costs + " where from nothing " + anew);
      long bound = s.warm().bound().bound();
      assertTrue(bound <= Math.min(costs, anew), at + "bound " + bound + " over a plan");
      assertTrue(
          bound >= 0.99 * s.cold().bound().bound(),
          at + bound + " for " + s.cold().bound().bound());
      assertEquals(Optional.empty(), s.refused(), at);
      warm += s.warmMs();
      cold += s.coldMs();
      fromNothing += s.fromNothing() ? 1 : 0;
      each.add(
          String.format(
              Locale.ROOT,
              "%s %.2f%s",
              s.name(),
              s.warmMs() / s.coldMs(),
              s.fromNothing() ? "*" : ""));
    }
    System.out.printf(
        Locale.ROOT,
        "live plan, %s: %d changes, warm %.0f ms, from nothing %.0f ms, ratio %.3f, %d searched anew (*): %s%n",
        where,
        changes.steps().size(),
        warm,
        cold,
        warm / cold,
        fromNothing,
        String.join(", ", each));
  }
}
