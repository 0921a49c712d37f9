package holloway.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.google.ortools.Loader;
import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPSolverParameters;
import com.google.ortools.linearsolver.MPVariable;
import holloway.limits.LocalRules;
import holloway.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * The cutting plan and the sharing of boxes against a mixed-integer solver on random orders that
 * are too large to try every way; a failure names its round. {@code -Dholloway.cuts=N}: so many
 * rounds.
 */
class AgainstCutProgramTest {
  private static final int ROUNDS = Integer.getInteger("holloway.cuts", 25);
  private static final double INFINITE = Double.POSITIVE_INFINITY;

  @BeforeEach
  void solver() {
    assumeTrue(
        System.getProperty("os.name").equals("Linux")
            && System.getProperty("os.arch").equals("amd64"),
        "the solver is there for one platform only");
    Loader.loadNativeLibraries();
  }

  @Test
  void theBoxesBoughtCostNoMoreThanTheProgramFinds() {
    Random random = new Random(20261127);
    int solved = 0;
    for (int round = 0; round < ROUNDS; round++) {
      List<Cutting.Size> sizes = new ArrayList<>();
      for (int s = 1 + random.nextInt(3); s > 0; s--) {
        sizes.add(new Cutting.Size(1000L * (40 + random.nextInt(120)), 10 + random.nextInt(90)));
      }
      long most = sizes.stream().mapToLong(Cutting.Size::usable).max().orElseThrow();
      List<Cutting.Piece> pieces = new ArrayList<>();
      for (int p = 8 + random.nextInt(5); p > 0; p--) {
        pieces.add(
            new Cutting.Piece("run " + p, 5_000 + (long) (random.nextDouble() * most * 0.6)));
      }
      // every other order may be cut by the shop too
      OptionalLong metre =
          round % 2 == 0 ? OptionalLong.empty() : OptionalLong.of(1 + random.nextInt(3));
      Cutting.Result ours = Cutting.of(pieces, sizes, metre);
      double[] exact = cheapest(pieces, sizes, metre);
      String where = "round " + round + ", " + pieces + " of " + sizes;
      assertTrue(ours.bound() <= exact[0] + 1e-6, where);
      assertTrue(ours.cost() >= exact[1] - 1e-6, where);
      if (exact[0] == exact[1]) {
        solved++;
        assertEquals(exact[0], ours.cost(), 1e-6, where);
        assertTrue(ours.proven(), where);
      }
    }
    assertTrue(solved >= 0.8 * ROUNDS, "only " + solved + " solved");
  }

  /** Cost and bound: each box is of one size or not bought, each piece in one box or cut. */
  private static double[] cheapest(
      List<Cutting.Piece> pieces, List<Cutting.Size> sizes, OptionalLong metre) {
    MPSolver solver = MPSolver.createSolver("SCIP");
    int n = pieces.size();
    MPVariable[][] in = new MPVariable[n][n];
    for (int b = 0; b < n; b++) {
      MPConstraint one = solver.makeConstraint(0, 1);
      MPConstraint room = solver.makeConstraint(-INFINITE, 0);
      for (Cutting.Size s : sizes) {
        MPVariable bought = solver.makeBoolVar("");
        solver.objective().setCoefficient(bought, s.cost());
        one.setCoefficient(bought, 1);
        // 5 % over what is used: the box less a 1/21 of it, whole millimetres
        room.setCoefficient(bought, -Math.floorDiv(s.mm() * 20, 21));
      }
      for (int p = 0; p < n; p++) {
        in[p][b] = solver.makeBoolVar("");
        room.setCoefficient(in[p][b], pieces.get(p).mm());
      }
    }
    for (int p = 0; p < n; p++) {
      MPConstraint somewhere = solver.makeConstraint(1, 1);
      if (metre.isPresent()) {
        MPVariable cut = solver.makeBoolVar("");
        somewhere.setCoefficient(cut, 1);
        // whole metres with 5 % over what is used
        double metres = Math.ceil(pieces.get(p).mm() * 1.05 / 1000 - 1e-9);
        solver.objective().setCoefficient(cut, metres * metre.getAsLong());
      }
      for (int b = 0; b < n; b++) {
        // boxes are alike: piece p stands in one of the first p + 1
        if (b <= p) {
          somewhere.setCoefficient(in[p][b], 1);
        } else {
          in[p][b].setUb(0);
        }
      }
    }
    return solve(solver);
  }

  private static double[] solve(MPSolver solver) {
    solver.setTimeLimit(4_000);
    MPSolverParameters exact = new MPSolverParameters();
    exact.setDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, 0);
    MPSolver.ResultStatus status = solver.solve(exact);
    boolean optimal = status == MPSolver.ResultStatus.OPTIMAL;
    boolean found = optimal || status == MPSolver.ResultStatus.FEASIBLE;
    double cost = found ? Math.round(solver.objective().value()) : INFINITE;
    return new double[] {cost, optimal ? cost : solver.objective().bestBound()};
  }

  /** Runs of one kind through stretches; the pulls of a stretch are the most out of one box. */
  @Test
  void pullsAreNoFewerThanTheProgramFindsAndNearlyAlwaysAsFew() {
    Random random = new Random(20261128);
    int same = 0;
    int solved = 0;
    for (int round = 0; round < ROUNDS; round++) {
      int runs = 8 + random.nextInt(6);
      List<List<Integer>> stretches = new ArrayList<>();
      List<String> kinds = new ArrayList<>();
      for (int s = 0; s < 6; s++) {
        stretches.add(new ArrayList<>());
      }
      for (int r = 0; r < runs; r++) {
        kinds.add(random.nextInt(5) == 0 ? "rg6" : "cat6");
        stretches.get(random.nextInt(2)).add(r);
        stretches.get(2 + random.nextInt(4)).add(r);
      }
      int boxes = 2 + random.nextInt(2);
      Plan plan = PullsTest.through(stretches, kinds);
      Pulls pulls = new Pulls(plan, Jackets.of(plan, LocalRules.NONE));
      double[] exact = fewest(stretches, kinds, boxes);
      int ours = pulls.count(pulls.shared(boxes));
      assertTrue(ours >= exact[1] - 1e-6, "round " + round + ": " + ours + " under " + exact[1]);
      assertTrue(pulls.bound(boxes) <= exact[0] + 1e-6, "round " + round);
      solved += exact[0] == exact[1] ? 1 : 0;
      same += ours == exact[0] ? 1 : 0;
    }
    System.out.printf("pulls: %d of %d solved, %d as few%n", solved, ROUNDS, same);
    assertTrue(solved >= 0.8 * ROUNDS, "only " + solved + " solved");
    assertTrue(same >= 0.9 * ROUNDS, "only " + same + " of " + ROUNDS + " as few");
  }

  private static double[] fewest(List<List<Integer>> stretches, List<String> kinds, int boxes) {
    MPSolver solver = MPSolver.createSolver("SCIP");
    MPVariable[][] from = new MPVariable[kinds.size()][boxes];
    for (MPVariable[] run : from) {
      MPConstraint one = solver.makeConstraint(1, 1);
      for (int b = 0; b < boxes; b++) {
        run[b] = solver.makeBoolVar("");
        one.setCoefficient(run[b], 1);
      }
    }
    for (List<Integer> stretch : stretches) {
      if (stretch.isEmpty()) {
        continue;
      }
      MPVariable pulls = solver.makeIntVar(1, kinds.size(), "");
      solver.objective().setCoefficient(pulls, 1);
      for (String kind : List.of("cat6", "rg6")) {
        for (int b = 0; b < boxes; b++) {
          MPConstraint most = solver.makeConstraint(0, INFINITE);
          most.setCoefficient(pulls, 1);
          for (int r : stretch) {
            if (kinds.get(r).equals(kind)) {
              most.setCoefficient(from[r][b], -1);
            }
          }
        }
      }
    }
    return solve(solver);
  }
}
