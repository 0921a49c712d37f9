package holloway.pipeline;

import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.fuzz.Mutants;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Whatever is done to a house file, the program answers or says what is wrong with it. Here a
 * slice; the profile {@code fuzz} takes 100 000, more of them to the end, and prints the slowest.
 */
class FuzzTest {
  private static final long SEED = Long.getLong("holloway.fuzz.seed", 20_261_125);
  private static final int COUNT = Integer.getInteger("holloway.fuzz", 2_000);
  private static final boolean WHOLE = COUNT > 2_000;

  @TempDir Path folder;

  @Test
  void everyMutantIsAnsweredOrRefused() throws Exception {
    FuzzRun run = new FuzzRun(new Mutants(SEED), folder, WHOLE ? 2 : 40, WHOLE ? 10 : 5);
    long begun = System.nanoTime();
    for (int i = 0; i < COUNT; i++) {
      run.take(i);
      if (WHOLE && i % 5_000 == 4_999) {
        System.out.print(run.report(SEED, 0, i + 1, (System.nanoTime() - begun) / 1e9));
      }
    }
    String report = run.report(SEED, 0, COUNT, (System.nanoTime() - begun) / 1e9);
    System.out.print(report);
    assertTrue(run.faults().isEmpty(), () -> report + String.join("\n", run.faults()));
    assertTrue(run.planned() > 0, () -> "nothing was planned, so this proves little: " + report);
  }
}
