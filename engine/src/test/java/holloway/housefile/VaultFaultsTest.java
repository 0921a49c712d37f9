package holloway.housefile;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Vaulted ceilings that cannot be. */
class VaultFaultsTest {
  @TempDir Path dir;

  private Written vaulted(String room) {
    return new Written(dir)
        .with("  office: { level: upper,", "  office: { level: upper, ceiling: " + room + ",");
  }

  @Test
  void underRaftersOfAGableItIsSound() throws IOException {
    vaulted("vaulted").with("frame: trusses", "frame: rafters").sound();
  }

  @Test
  void theWordAndTheRoof() throws IOException {
    vaulted("volted").assertProblemAt("volted", "did you mean 'vaulted'");
    vaulted("vaulted").assertProblemAt("{ level: upper, ceiling", "vaulted ceiling under trusses");
    vaulted("vaulted")
        .with("shape: gable, ridge", "shape: hip, ridge")
        .with("frame: trusses", "frame: rafters")
        .assertProblemAt("{ level: upper, ceiling", "vaulted ceiling under a hip roof");
    new Written(dir)
        .with("garage: { level: ground,", "garage: { level: ground, ceiling: vaulted,")
        .assertProblemAt("{ level: ground, ceiling", "no roof is stated over it");
  }

  @Test
  void nothingLiesOverIt() throws IOException {
    vaulted("vaulted")
        .with(
            "frame: trusses", "frame: rafters, hatch: { in: office, at: [west 4 ft, south 2 ft] }")
        .assertProblemAt("{ over", "no void lies over it for a hatch");
  }
}
