package holloway.housefile;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A flat roof that cannot be. */
class FlatFaultsTest {
  private static final String ROOF = "{ over: upper, shape: gable, ridge: east-west, pitch: 6/12,";

  @TempDir Path dir;

  private Written flat(String more) {
    return new Written(dir)
        .with(ROOF, "{ over: upper, shape: flat, run: north-south,")
        .with("frame: trusses", "frame: " + more);
  }

  @Test
  void joistsThatRunOneWayAreSound() throws IOException {
    flat("rafters").sound();
  }

  @Test
  void eitherBaysOrAnAttic() throws IOException {
    flat("trusses").assertProblemAt("{ over: upper", "between flat trusses is not known");
    flat("rafters, heel: 3 ft").assertProblemAt("{ over: upper", "both 'run'", "and 'heel'");
    flat("rafters, hatch: { in: office, at: [west 4 ft, south 2 ft] }")
        .assertProblemAt("{ over: upper", "nobody gets in between its joists");
    flat("rafters, insulation: none")
        .with("shape: flat,", "shape: gable, ridge: east-west, pitch: 6/12,")
        .assertProblemAt("{ over: upper", "only a flat roof's joists have a 'run'");
    flat("rafters").with("north-south", "northsouth").assertProblemAt("northsouth", "north-south");
  }
}
