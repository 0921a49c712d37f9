package holloway.housefile;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Flights that no house has. */
class StairFaultsTest {
  @TempDir Path dir;

  private static final String STAIRS =
      "stairs: [{ stair: back, in: kitchen, from: [west 1 ft, south 1 ft], size: 3 ft x 9 ft, climbs: north, under: closed }]\n";

  private Written stairs(String old, String wrong) {
    return new Written(dir).plus(STAIRS.replace(old, wrong));
  }

  @Test
  void aSoundOne() throws IOException {
    stairs("", "").sound();
  }

  @Test
  void tooShortOrNarrow() throws IOException {
    stairs("3 ft x 9 ft", "3 ft x 2 ft")
        .assertProblemAt("3 ft x 2 ft", "climbs north", "too short");
    stairs("3 ft x 9 ft", "1 ft x 9 ft").assertProblemAt("1 ft x 9 ft", "too narrow");
  }

  @Test
  void beyondTheRoom() throws IOException {
    stairs("3 ft x 9 ft", "3 ft x 12 ft")
        .assertProblemAt("south 1 ft", "the far side of stair 'back' lies beyond the west wall");
  }

  @Test
  void words() throws IOException {
    stairs("under: closed", "under: clsoed").assertProblemAt("clsoed");
    stairs("climbs: north", "climbs: up").assertProblemAt("up, under");
    stairs("[west 1 ft, south 1 ft]", "[west 1 ft, east 1 ft]")
        .assertProblemAt("[west 1 ft", "one of west and east");
  }
}
