package holloway.solve;

import holloway.request.Profile;
import java.util.Arrays;
import java.util.Locale;

/**
 * The planner beside a mixed-integer solver on growing random graphs: the planner first, then the
 * solver with the same time, a second at least. Prints rows of a table; gaps are (cost - bound) /
 * cost, {@code -} where no plan was found.
 */
final class FlowTable {
  private static final int[][] SIZES = {{10, 12, 4}, {20, 30, 6}, {30, 50, 8}, {45, 80, 10}, {60, 110, 14}};
  private static final int SEEDS = 8;

  private FlowTable() {}

  /** As many of the sizes as the first argument says, all without one. */
  public static void main(String[] args) {
    int sizes = args.length == 0 ? SIZES.length : Integer.parseInt(args[0]);
    System.out.println("| places, runs, seed | planner s | planner gap | solver s | solver gap | planner / solver |");
    System.out.println("|---|---|---|---|---|---|");
    for (int[] size : Arrays.copyOf(SIZES, Math.min(sizes, SIZES.length))) {
      for (long seed = 1; seed <= SEEDS; seed++) {
        row(size, seed);
      }
    }
  }

  private static void row(int[] size, long seed) {
    RandomGraph r = new RandomGraph(seed, size[0], size[1], size[2], Profile.LEAST_WORK);
    long begun = System.nanoTime();
    Solved found = JointPlanner.solve(r.graph, r.order, Budget.USUAL, Progress.SILENT);
    double seconds = (System.nanoTime() - begun) / 1e9;
    if (!found.plan().unrouted().isEmpty()) {
      return;
    }
    long millis = Math.max(1_000, Math.round(1_000 * seconds));
    begun = System.nanoTime();
    FlowProgram.Answer mip = FlowProgram.solve(r.graph, r.order, millis);
    double taken = (System.nanoTime() - begun) / 1e9;
    double cost = found.plan().totals().objective();
    boolean other = mip.cost() < Double.POSITIVE_INFINITY;
    System.out.printf(
        Locale.ROOT,
        "| %d, %d, %d | %.2f | %.2f %% | %.2f | %s | %s |%n",
        size[0],
        size[2],
        seed,
        seconds,
        100 * (cost - found.bound().bound()) / cost,
        taken,
        other ? "%.2f %%".formatted(100 * (mip.cost() - mip.bound()) / mip.cost()) : "-",
        other ? "%.4f".formatted(cost / mip.cost()) : "-");
  }
}
