package holloway.bench;

import holloway.solve.Budget;
import holloway.solve.Solved;
import holloway.support.LargeHouse;
import holloway.support.StagedPlan;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/**
 * One cold plan with the processor time of each stage: a size of {@link LargeHouse} or a house
 * file, then the effort (quick, usual, thorough). Ends with 1 when a run has no route or the
 * referee refuses the plan.
 */
public final class StageTimes {
  private StageTimes() {}

  public static void main(String[] args) throws IOException {
    Path file = args[0].endsWith(".yaml") ? Path.of(args[0]) : generated(args[0]);
    StagedPlan staged = new StagedPlan(file);
    Solved solved = staged.solve(budget(args.length > 1 ? args[1] : "usual"));
    var t = solved.plan().totals();
    var refusals = staged.refusals(solved.plan());
    var g = staged.routed.graph();
    System.out.printf(
        Locale.ROOT,
        "%s: %d nodes, %d edges, %d holes, %d works; %d runs, %d unrouted; objective %d, bound %d,"
            + " gap %.2f %%; %d refusals%n%s%n",
        args[0],
        g.nodes().size(),
        g.edges().size(),
        g.holes().size(),
        g.works().size(),
        solved.plan().runs().size(),
        solved.plan().unrouted().size(),
        t.objective(),
        t.bound(),
        100 * t.gap(),
        refusals.size(),
        staged.times());
    refusals.stream().limit(5).forEach(System.out::println);
    solved.plan().unrouted().stream().limit(5).forEach(System.out::println);
    if (!refusals.isEmpty() || !solved.plan().unrouted().isEmpty()) {
      System.exit(1);
    }
  }

  private static Path generated(String size) throws IOException {
    Path file = Files.createTempFile("large", ".yaml");
    file.toFile().deleteOnExit();
    String name = size.toUpperCase(Locale.ROOT);
    return Files.writeString(file, LargeHouse.text(LargeHouse.Size.valueOf(name), 1));
  }

  private static Budget budget(String effort) {
    return switch (effort) {
      case "quick" -> Budget.QUICK;
      case "usual" -> Budget.USUAL;
      case "thorough" -> Budget.THOROUGH;
      default -> throw new IllegalArgumentException(effort);
    };
  }
}
