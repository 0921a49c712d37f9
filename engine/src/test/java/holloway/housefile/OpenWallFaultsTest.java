package holloway.housefile;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Half-height walls and open sides as a newcomer writes them first. */
class OpenWallFaultsTest {
  @TempDir Path dir;

  private Written wall(String wall) {
    return new Written(dir).with("studs: 2x6, separation: garage", wall);
  }

  @Test
  void bothAreRead() throws IOException {
    wall("height: 42 in").sound();
    wall("kind: open").sound();
    wall("kind: open, header: 10 in").sound();
  }

  @Test
  void aHalfHeightWallStandsBetweenRoomsAndBearsNothing() throws IOException {
    wall("height: 42").assertProblemAt("42 }", "unit");
    wall("height: 10 ft").assertProblemAt("10 ft }", "no dropped-ceiling is stated in");
    wall("height: 30 ft").assertProblemAt("30 ft }", "too long");
    wall("height: 42 in, bearing: yes").assertProblemAt("42 in", "bears no floor");
    wall("height: 42 in, party: yes").assertProblemAt("42 in", "no half-height wall");
    new Written(dir)
        .with("walls:", "walls:\n  - { side: kitchen west, height: 42 in }")
        .assertProblemAt("42 in", "between two rooms");
  }

  @Test
  void anOpenSideHasNothingInIt() throws IOException {
    wall("header: 10 in").assertProblemAt("10 in }", "hangs over an open side");
    wall("kind: open, every: 16 in").assertProblemAt("16 in", "has no 'every'");
    new Written(dir)
        .with("walls:", "walls:\n  - { side: kitchen west, kind: open }")
        .assertProblemAt("open }", "between two rooms");
    new Written(dir)
        .with("levels:", "inner-walls: { kind: open }\nlevels:")
        .assertProblemAt("open }", "under 'walls:'");
  }
}
