package holloway.pipeline;

import holloway.cli.Said;
import holloway.fuzz.Mutants;
import holloway.fuzz.Mutants.Mutant;
import holloway.support.Rough;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * Takes mutants of a seed through {@code check}; those that read soundly also through framing,
 * hollows and graph, and a share through the whole {@code plan}. To look at some of them alone, run
 * it with SEED FIRST COUNT.
 */
public final class FuzzRun {
  /** Of processor time: other work on the machine must not look like a hang. */
  private static final int GUARD_SECONDS = 60;

  private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();
  private static final int SLOWEST = 8;
  private static final Set<Integer> CHECKED = Set.of(0, 3);
  private static final Set<Integer> PLANNED = Set.of(0, 3, 4, 5);

  private final Mutants mutants;
  private final Path folder;
  private final int deepEvery;
  private final int planEvery;
  private final List<String> faults = new ArrayList<>();
  private final List<Timed> slowest = new ArrayList<>();
  private ExecutorService worker = newWorker();
  private double processor;
  private int sound;
  private int deep;
  private int planned;
  private Path house;

  private record Timed(int number, double seconds, String what) {}

  /**
   * @param deepEvery each so manieth sound mutant goes on to the graph
   * @param planEvery and each so manieth of those is planned
   */
  FuzzRun(Mutants mutants, Path folder, int deepEvery, int planEvery) {
    this.mutants = mutants;
    this.folder = folder;
    this.deepEvery = deepEvery;
    this.planEvery = planEvery;
  }

  List<String> faults() {
    return List.copyOf(faults);
  }

  int planned() {
    return planned;
  }

  /** Takes one mutant as far as it goes. */
  void take(int number) throws IOException {
    Mutant m = mutants.get(number);
    house = folder.resolve("mutant.yaml");
    Files.write(house, m.house());
    Path beside = folder.resolve("mutant.found.yaml");
    Files.deleteIfExists(beside);
    if (m.found().isPresent()) {
      Files.write(beside, m.found().get());
    }
    guarded(number, m, () -> through(number, m));
  }

  private void through(int number, Mutant m) throws Exception {
    boolean json = number % 2 == 0;
    if (said(number, m, CHECKED, "check", json ? List.of("--json") : List.of()) != 0) {
      return;
    }
    if (sound++ % deepEvery == 0) {
      deep();
      if (deep++ % planEvery == 0) {
        List<String> how = new ArrayList<>(List.of(Rough.WORDS));
        how.add(json ? "--json" : "--steps");
        said(number, m, PLANNED, "plan", how);
        planned++;
      }
    }
  }

  /** An end that is nowhere on the placed walls is still told as a fault of the file. */
  private void deep() {
    RealStages stages = new RealStages(Progress.SILENT);
    Stages.Reading read = stages.read(house);
    try {
      stages.derive(stages.survey(read.house()).value(), read.request());
    } catch (InputTrouble told) {
      if (told.lines().isEmpty()) {
        throw told;
      }
    }
  }

  private int said(int number, Mutant m, Set<Integer> allowed, String verb, List<String> more) {
    List<String> args = new ArrayList<>(List.of(verb, house.toString()));
    args.addAll(more);
    Said said = Said.whole(args.toArray(String[]::new));
    String words = said.err();
    int code = said.code();
    boolean silent = code == 3 && words.isBlank();
    if (!allowed.contains(code) || silent || words.contains("\tat ")) {
      fault(number, m, verb + " ends with " + code + ": " + first(words));
    }
    return code;
  }

  private static String first(String words) {
    return words.lines().limit(3).map(String::strip).reduce("", (a, b) -> a + " | " + b);
  }

  private void fault(int number, Mutant m, String what) {
    faults.add("mutant " + number + " (" + m.how() + " of " + m.from() + "): " + what);
  }

  /** What one mutant does. */
  private interface Work {
    void run() throws Exception;
  }

  private void guarded(int number, Mutant m, Work work) {
    Thread[] at = new Thread[1];
    long[] used = new long[2];
    Future<?> running =
        worker.submit(
            () -> {
              at[0] = Thread.currentThread();
              used[0] = CLOCK.getCurrentThreadCpuTime();
              try {
                work.run();
              } finally {
                used[1] = CLOCK.getCurrentThreadCpuTime();
              }
              return null;
            });
    try {
      while (!ended(running)) {
        long now = at[0] == null ? 0 : CLOCK.getThreadCpuTime(at[0].getId()) - used[0];
        if (now > GUARD_SECONDS * 1_000_000_000L) {
          fault(number, m, "hangs at " + places(at[0].getStackTrace()));
          worker.shutdownNow();
          worker = newWorker();
          return;
        }
      }
    } catch (ExecutionException e) {
      Throwable t = e.getCause();
      fault(number, m, t + " at " + places(t.getStackTrace()));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    keep(new Timed(number, (used[1] - used[0]) / 1e9, m.how() + " of " + m.from()));
  }

  private static boolean ended(Future<?> running) throws ExecutionException, InterruptedException {
    try {
      running.get(1, TimeUnit.SECONDS);
      return true;
    } catch (TimeoutException e) {
      return false;
    }
  }

  private static String places(StackTraceElement[] trace) {
    List<String> ours = new ArrayList<>();
    for (int i = 0; i < trace.length && ours.size() < 4; i++) {
      if (i == 0 || trace[i].getClassName().startsWith("holloway")) {
        ours.add(trace[i].toString());
      }
    }
    return String.join(" < ", ours);
  }

  private void keep(Timed t) {
    processor += t.seconds;
    slowest.add(t);
    slowest.sort(Comparator.comparingDouble(Timed::seconds).reversed());
    if (slowest.size() > SLOWEST) {
      slowest.remove(SLOWEST);
    }
  }

  private static ExecutorService newWorker() {
    return Executors.newSingleThreadExecutor(
        r -> {
          Thread t = new Thread(r, "mutant");
          t.setDaemon(true);
          return t;
        });
  }

  /** Counts and the slowest, in a few lines. */
  String report(long seed, int from, int to, double seconds) {
    StringBuilder out = new StringBuilder();
    out.append(
        String.format(
            Locale.ROOT,
            "seed %d, mutants %d to %d in %.0f s (%.0f s of processor): %d sound, %d to the graph, %d planned, %d faults%n",
            seed,
            from,
            to - 1,
            seconds,
            processor,
            sound,
            deep,
            planned,
            faults.size()));
    for (Timed t : slowest) {
      out.append(
          String.format(Locale.ROOT, "  %6.2f s  mutant %d (%s)%n", t.seconds, t.number, t.what));
    }
    return out.toString();
  }

  /**
   * SEED FIRST COUNT, then how many sound mutants to each that goes to the graph, and how many of
   * those to each that is planned; 1 unless said. The last mutant's text is left where it says.
   */
  public static void main(String[] args) throws IOException {
    long seed = Long.parseLong(args[0]);
    int from = Integer.parseInt(args[1]);
    int to = from + Integer.parseInt(args[2]);
    int deepEvery = args.length > 3 ? Integer.parseInt(args[3]) : 1;
    int planEvery = args.length > 4 ? Integer.parseInt(args[4]) : 1;
    Path folder = Files.createTempDirectory("mutants");
    FuzzRun run = new FuzzRun(new Mutants(seed), folder, deepEvery, planEvery);
    long begun = System.nanoTime();
    int told = 0;
    for (int i = from; i < to; i++) {
      run.take(i);
      for (; told < run.faults.size(); told++) {
        System.out.println(run.faults.get(told));
      }
      if (i % 1000 == 999 || i == to - 1) {
        System.out.print(run.report(seed, from, i + 1, (System.nanoTime() - begun) / 1e9));
      }
    }
    System.out.println("last one: " + run.house);
  }
}
