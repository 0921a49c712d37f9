package holloway.housefile;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Blocks over the walls below: a yes or a no, not their places. */
class OverWallsFaultsTest {
  @TempDir Path dir;

  private Written said(String what) {
    return new Written(dir).with("run: east-west", "run: east-west, blocks-over-walls: " + what);
  }

  @Test
  void yesOrNo() throws IOException {
    said("no").sound();
    said("yes").sound();
    said("none").assertProblemAt("none", "yes or no");
  }
}
