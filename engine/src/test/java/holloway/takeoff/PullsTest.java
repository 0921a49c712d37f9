package holloway.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.catalog.PriceList;
import holloway.geometry.Point3;
import holloway.limits.LocalRules;
import holloway.pipeline.Toy;
import holloway.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Pulls of runs that share blind stretches, by hand and against every way of sharing out. */
class PullsTest {
  private static Plan.PlannedRun run(String id, String cable, double m, String... stretches) {
    List<Plan.PlanStep> steps = new ArrayList<>();
    for (int s = 0; s < stretches.length; s++) {
      steps.add(
          new Plan.PlanStep(
              "leg",
              stretches[s],
              Optional.of("stud bay"),
              Optional.empty(),
              List.of(new Point3(0, 0, 0), new Point3(0, 0, 1)),
              1,
              Optional.of("blind"),
              Optional.of(s + 1),
              Optional.of(1.0)));
    }
    return new Plan.PlannedRun(id, "cabinet", id, cable, m, m, steps);
  }

  private static Plan plan(List<Plan.PlannedRun> runs) {
    Plan toy = Toy.bare();
    return toy.withRuns(runs, toy.totals());
  }

  /** A chase that all four share, then a wall for three of them and another for the fourth. */
  private static Plan trunk() {
    return plan(
        List.of(
            run("a", "cat6", 20, "chase", "office wall"),
            run("b", "cat6", 20, "chase", "office wall"),
            run("c", "cat6", 20, "chase", "office wall"),
            run("d", "cat6", 20, "chase", "bedroom wall"),
            run("e", "om4", 20, "chase", "office wall")));
  }

  @Test
  void moreBoxesAtOnceMakeFewerPulls() {
    // One box: chase 4, office 3, bedroom 1 = 8. Two: 2 + 2 + 1 = 5. Three: 2 + 1 + 1 = 4.
    // Four: every stretch once = 3. The lead goes along each time.
    BoxPlan boxes = BoxPlanner.of(trunk(), PriceList.NONE, LocalRules.NONE);
    assertEquals(
        List.of(
            new BoxPlan.AtOnce(1, 8, 8),
            new BoxPlan.AtOnce(2, 5, 5),
            new BoxPlan.AtOnce(3, 4, 4),
            new BoxPlan.AtOnce(4, 3, 3)),
        boxes.pulls());
    assertEquals(3, boxes.fewestPulls());
    // Three of 20 m and 5 % out of a box of 76 m, the fourth cut by the shop: 21 m counted as 63.
    assertEquals(2, boxes.orders().get(0).reels().size());
    assertEquals(76 + 63, boxes.orders().get(0).amount());
    // Where the shop cuts none, 84 m are one box of 152 m or two of 76 m, both 152 m; one box is
    // less to carry, and all is drawn from it.
    PriceList whole =
        new PriceList(
            "x",
            "USD",
            java.util.Map.of(
                "cat6", PriceList.ladder(java.util.Map.of(76, 7600L, 152, 15_200L, 305, 30_500L))),
            java.util.Map.of(),
            java.util.Map.of());
    BoxPlan one = BoxPlanner.of(trunk(), whole, LocalRules.NONE);
    assertEquals(1, one.orders().get(0).reels().size());
    assertEquals(15_200, one.orders().get(0).amount());
    assertEquals(8, one.pullsAsCut());
  }

  @Test
  void piecesChangeBoxesWhereThatSavesPulls() {
    // Boxes of 42 m (40 to use) hold two of 20 m: two boxes, and the two of each wall are parted.
    PriceList small =
        new PriceList(
            "x",
            "USD",
            java.util.Map.of("cat6", PriceList.ladder(java.util.Map.of(42, 1000L))),
            java.util.Map.of(),
            java.util.Map.of());
    Plan plan =
        plan(
            List.of(
                run("a", "cat6", 20, "left"),
                run("b", "cat6", 20, "left"),
                run("c", "cat6", 20, "right"),
                run("d", "cat6", 20, "right")));
    BoxPlan boxes = BoxPlanner.of(plan, small, LocalRules.NONE);
    assertEquals(2000, boxes.orders().get(0).amount());
    assertEquals(2, boxes.pullsAsCut(), boxes.toString());
  }

  @Test
  void againstEveryWayOfSharingOut() {
    Random random = new Random(6);
    int missed = 0;
    for (int round = 0; round < 200; round++) {
      Plan plan = plan(randomRuns(random));
      Pulls pulls = new Pulls(plan, Jackets.of(plan, LocalRules.NONE));
      for (int boxes = 1; boxes <= 3; boxes++) {
        int exact = fewest(pulls, new int[plan.runs().size()], 0, boxes);
        int found = pulls.count(pulls.shared(boxes));
        assertTrue(pulls.bound(boxes) <= exact, "round " + round);
        assertTrue(exact <= found, "round " + round);
        missed += found > exact ? 1 : 0;
      }
    }
    // A local search: at most 3 in 100 miss the fewest.
    assertTrue(missed <= 18, missed + " of 600");
  }

  /** Runs of those kinds, each through the stretches that list it. */
  static Plan through(List<List<Integer>> stretches, List<String> kinds) {
    List<Plan.PlannedRun> runs = new ArrayList<>();
    for (int r = 0; r < kinds.size(); r++) {
      int run = r;
      String[] mine =
          java.util.stream.IntStream.range(0, stretches.size())
              .filter(s -> stretches.get(s).contains(run))
              .mapToObj(s -> "stretch " + s)
              .toArray(String[]::new);
      runs.add(run("run " + r, kinds.get(r), 20, mine));
    }
    return plan(runs);
  }

  private static List<Plan.PlannedRun> randomRuns(Random random) {
    List<Plan.PlannedRun> runs = new ArrayList<>();
    for (int r = 2 + random.nextInt(5); r > 0; r--) {
      String trunk = "trunk " + random.nextInt(2);
      String wall = "wall " + random.nextInt(3);
      runs.add(run("run " + r, random.nextInt(4) == 0 ? "rg6" : "cat6", 20, trunk, wall));
    }
    return runs;
  }

  private static int fewest(Pulls pulls, int[] from, int r, int boxes) {
    if (r == from.length) {
      return pulls.count(from);
    }
    int best = Integer.MAX_VALUE;
    for (int b = 0; b < boxes; b++) {
      from[r] = b;
      best = Math.min(best, fewest(pulls, from, r + 1, boxes));
    }
    return best;
  }
}
