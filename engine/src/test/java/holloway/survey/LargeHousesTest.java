package holloway.survey;

import static org.junit.jupiter.api.Assertions.assertFalse;

import holloway.housefile.HouseFile;
import holloway.housefile.Reading;
import holloway.support.LargeHouse;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Houses of the benchmark's kind are placed, whatever the seed. */
class LargeHousesTest {
  @TempDir Path dir;

  /** The floor of small house 5 once had an edge with a step too fine to be cut. */
  @Test
  void everySeedIsPlaced() throws IOException {
    for (long seed = 1; seed <= 20; seed++) {
      Path file = Files.writeString(dir.resolve("house.yaml"), text(seed));
      Reading read = HouseFile.read(file);
      Reading.Sound sound = (Reading.Sound) read;
      assertFalse(Survey.of(sound.house()).value().walls().isEmpty(), "seed " + seed);
    }
  }

  private static String text(long seed) {
    return LargeHouse.text(seed == 20 ? LargeHouse.Size.MEDIUM : LargeHouse.Size.SMALL, seed);
  }
}
