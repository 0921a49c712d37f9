package holloway.solve;

import holloway.support.LargeHouse;
import holloway.support.StagedPlan;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * The joint plan of houses with its proof, row by row of a table: named seeds of {@link LargeHouse}
 * or house files. Processor time stands beside wall time, for the machine may be busy; the last
 * column is what every run on its own shortest way costs, shared works paid once, over the plan.
 * Arguments: quick, usual or thorough, then sizes with their seeds ({@code small:1-8}) or files.
 */
final class HouseTable {
  private HouseTable() {}

  public static void main(String[] args) throws IOException {
    Budget budget =
        switch (args[0]) {
          case "quick" -> Budget.QUICK;
          case "usual" -> Budget.USUAL;
          default -> Budget.THOROUGH;
        };
    System.out.println("| house | places | runs | gap | wall s | processor s | apart / joint |");
    System.out.println("|---|---|---|---|---|---|---|");
    for (int i = 1; i < args.length; i++) {
      if (args[i].equals("goals")) {
        goals(budget);
      } else if (args[i].endsWith(".yaml")) {
        var file = java.nio.file.Path.of(args[i]);
        row(file.getFileName().toString().replace(".yaml", ""), file, budget);
      } else {
        seeds(args[i], budget);
      }
    }
  }

  /** Everything the table of the goals has: eight seeds of each size. */
  private static void goals(Budget budget) throws IOException {
    for (LargeHouse.Size size : LargeHouse.Size.values()) {
      seeds(size.name().toLowerCase(Locale.ROOT) + ":1-8", budget);
    }
  }

  private static void seeds(String asked, Budget budget) throws IOException {
    String[] part = asked.split("[:-]");
    LargeHouse.Size size = LargeHouse.Size.valueOf(part[0].toUpperCase(Locale.ROOT));
    for (long seed = Long.parseLong(part[1]); seed <= Long.parseLong(part[2]); seed++) {
      var file = Files.createTempFile("large", ".yaml");
      file.toFile().deleteOnExit();
      Files.writeString(file, LargeHouse.text(size, seed));
      row(part[0] + " " + seed, file, budget);
    }
  }

  private static void row(String name, java.nio.file.Path file, Budget budget) {
    StagedPlan staged = new StagedPlan(file);
    var machine =
        (com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
    long wall = System.nanoTime();
    long used = machine.getProcessCpuTime();
    Solved s = JointPlanner.solve(staged.routed.graph(), staged.order(), budget, Progress.SILENT);
    wall = System.nanoTime() - wall;
    used = machine.getProcessCpuTime() - used;
    var totals = s.plan().totals();
    System.out.printf(
        Locale.ROOT,
        "| %s | %d | %d | %.2f %% | %.1f | %.1f | %.3f |%n",
        name,
        staged.routed.graph().nodes().size(),
        s.plan().runs().size(),
        100 * totals.gap(),
        wall / 1e9,
        used / 1e9,
        (double) apart(staged) / totals.objective());
  }

  private static long apart(StagedPlan staged) {
    Task task = new Task(staged.routed.graph(), staged.order());
    Zones zones = new Zones(task.net);
    Draft draft = new Draft(task, zones);
    int[] runs = IntStream.range(0, task.runs()).toArray();
    new Insertion(draft, new MarginalSearch(draft, zones)).independent(runs);
    return draft.price();
  }
}
