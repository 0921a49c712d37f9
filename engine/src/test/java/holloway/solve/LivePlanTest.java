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
