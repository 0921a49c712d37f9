package holloway.housefile;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Beams as a newcomer writes them first. */
class BeamFaultsTest {
  @TempDir Path dir;

  private Written beam(String more) {
    return new Written(dir)
        .with("walls:", "beams:\n  - { beam: lintel, in: kitchen, " + more + " }\nwalls:");
  }

  @Test
  void aBeamIsRead() throws IOException {
    beam("run: north-south, from: west 4 ft, width: 6 in, drop: 8 in").sound();
    beam("run: north-south, from: west 4 ft, width: 6 in, depth: 9-1/4 in, made: steel").sound();
  }

  @Test
  void itSaysWhereAndHowDeep() throws IOException {
    beam("run: north-south, width: 6 in, drop: 8 in").assertProblemAt("{ beam:", "lacks 'from:'");
    beam("run: north-south, from: north 4 ft, width: 6 in, drop: 8 in")
        .assertProblemAt("north 4 ft", "not from one it ends at");
    beam("run: north-south, from: west 4 ft, width: 6 in")
        .assertProblemAt("{ beam:", "how deep it is");
    beam("run: north-south, from: west 4 ft, width: 6 in, drop: 8 in, depth: 6 in")
        .assertProblemAt("6 in }", "not only");
    beam("run: north-south, from: west 4 ft, width: 6 in, drop: 8 in, made: iron")
        .assertProblemAt("iron", "cannot be 'iron'");
  }
}
