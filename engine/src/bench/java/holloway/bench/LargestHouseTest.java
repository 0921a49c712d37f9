package holloway.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/**
 * A 600 m2 house with 60 runs is framed, routed and planned in a process of its own that may use
 * one gigabyte of heap. {@link StageTimes} fails when a run has no route or the referee refuses.
 */
class LargestHouseTest {
  @Test
  void oneGigabyteIsEnough() throws Exception {
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx1g",
                "-cp",
                System.getProperty("java.class.path"),
                StageTimes.class.getName(),
                "large",
                "usual")
            .inheritIO()
            .start();
    if (!process.waitFor(10, TimeUnit.MINUTES)) {
      process.destroyForcibly();
    }
    assertEquals(0, process.exitValue());
  }
}
