package holloway.housefile;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Other places of the cabinet are looked at like its own. */
class CabinetFaultsTest {
  @TempDir Path dir;

  @Test
  void otherPlaces() throws IOException {
    new Written(dir)
        .with(
            "height: 5 ft }",
            "height: 5 ft, or: [{ in: office, wall: south, from: west 15 ft, height: 4 ft }] }")
        .assertProblemAt("west 15 ft", "beyond the south wall of 'office'");
    new Written(dir)
        .with("height: 5 ft }", "height: 5 ft, or: [{ in: office, wall: south, height: 4 ft }] }")
        .assertProblemAt("{ in: office, wall: south, height: 4 ft", "from");
  }
}
