package holloway.housefile;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.survey.Survey;
import holloway.survey.SurveyException;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Porches as a newcomer writes them first, and what hangs under them. */
class PorchFaultsTest {
  private static final String WHERE = "side: kitchen SIDE, from: west 1 ft, length: 5 ft, ";
  private static final String SIZE = "out: 6 ft, height: 7 ft, ceiling: boarded, ";

  @TempDir Path dir;

  private Written porch(String more) {
    return new Written(dir).with("walls:", "porches:\n  - { porch: stoop, " + more + " }\nwalls:");
  }

  @Test
  void aPorchIsRead() throws IOException {
    String where = WHERE.replace("SIDE", "south");
    porch(where + SIZE + "roof: flat").sound();
    porch(where + SIZE + "roof: shed, pitch: 3/12, joists: 2x8, every: 24 in, run: along").sound();
  }

  @Test
  void itSaysWhereAndHowHigh() throws IOException {
    String where = WHERE.replace("SIDE", "south");
    porch(where + SIZE + "roof: shed").assertProblemAt("{ porch:", "of a porch needs a pitch");
    porch(where + SIZE + "roof: flat, pitch: 3/12").assertProblemAt("3/12", "has no pitch");
    porch(where + "out: 6 ft, height: 2 ft, ceiling: boarded, roof: flat")
        .assertProblemAt("2 ft, ceiling", "taped from the floor of the room behind the wall");
    porch(where + "out: 1 ft, height: 7 ft, ceiling: boarded, roof: flat")
        .assertProblemAt("1 ft, height", "the eaves of a roof");
    porch(where + "out: 6 ft, height: 7 ft, ceiling: board, roof: flat")
        .assertProblemAt("board, roof", "cannot be 'board'");
    porch(where + "height: 7 ft, ceiling: boarded, roof: flat")
        .assertProblemAt("{ porch:", "lacks 'out:'");
    porch(where.replace("west", "north") + SIZE + "roof: flat")
        .assertProblemAt("north 1 ft", "tape from its west or east end");
  }

  private Written under(String spot) {
    return porch(WHERE.replace("SIDE", "south") + SIZE + "roof: flat")
        .with("outlets:\n", "outlets:\n  - { name: eye, " + spot + ", cables: [cat6] }\n");
  }

  @Test
  void anOutletUnderItIsTapedFromItsEndAndTheWall() throws IOException {
    under("under: stoop, from: west 2 ft, out: 3 ft").sound();
    under("under: stop, from: west 2 ft, out: 3 ft")
        .assertProblemAt("stop", "there is no porch 'stop'");
    under("under: stoop, from: west 2 ft").assertProblemAt("{ name: eye", "lacks 'out:'");
    under("under: stoop, out: 2 ft").assertProblemAt("{ name: eye", "lacks 'from:'");
    under("under: stoop, from: west 2 ft, out: 3 ft, height: 7 ft")
        .assertProblemAt("7 ft, cables", "'height' means nothing");
    under("under: stoop, from: west 6 ft, out: 3 ft")
        .assertProblemAt("west 6 ft", "past the end of porch 'stoop'");
    under("under: stoop, from: west 2 ft, out: 7 ft")
        .assertProblemAt("7 ft, cables", "past the outer edge");
    under("outside: kitchen south, from: west 2 ft, height: 3 ft, out: 3 ft")
        .assertProblemAt("3 ft, cables", "taped for what hangs under a porch");
  }

  private void refused(String porch, String says) throws IOException {
    Reading.Sound read = porch(porch).sound();
    SurveyException e = assertThrows(SurveyException.class, () -> Survey.of(read.house()));
    assertTrue(e.getMessage().contains(says), e.getMessage());
  }

  @Test
  void itStandsAgainstAnOuterWall() throws IOException {
    String where = WHERE.replace("SIDE", "south");
    refused(
        where.replace("west 1 ft", "west 200 ft") + SIZE + "roof: flat",
        "past the end of that wall");
    refused(where.replace("5 ft", "90 ft") + SIZE + "roof: flat", "goes round a corner");
  }
}
