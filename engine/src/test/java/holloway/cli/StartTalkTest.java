package holloway.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.pipeline.StartWishes;
import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The questions that {@code start} asks on a terminal. */
class StartTalkTest {
  @TempDir Path folder;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();

  private StartTalk.Answered answers(String... lines) {
    BufferedReader in = new BufferedReader(new StringReader(String.join("\n", lines) + "\n"));
    PrintStream to = new PrintStream(out, true, StandardCharsets.UTF_8);
    return StartTalk.with(new Questions(in, to), "s.json");
  }

  @Test
  void emptyAnswersTakeWhatIsOffered() {
    String file = folder.resolve("h.yaml").toString();
    assertEquals(
        new StartTalk.Answered(
            new StartWishes("s.json", "My House", "us", 0, 1, false), Path.of(file)),
        answers("", "", "", "", "", file));
  }

  @Test
  void aPlaceInEuropeIsMetric() {
    String file = folder.resolve("h.yaml").toString();
    StartWishes w = answers("Old Mill", "uk", "1890", "2", "", file).wishes();
    assertEquals(new StartWishes("s.json", "Old Mill", "uk", 1890, 2, true), w);
  }

  @Test
  void aWrongAnswerIsAskedAgainAndSaysWhy() throws Exception {
    Path there = Files.writeString(folder.resolve("there.yaml"), "mine");
    String file = folder.resolve("h.yaml").toString();
    StartTalk.Answered a =
        answers(
            "",
            "de",
            "none",
            "18",
            "1599",
            "1600",
            "4",
            "3",
            "inches",
            "feet",
            there.toString(),
            file);
    assertEquals(new StartWishes("s.json", "My House", "none", 1600, 3, false), a.wishes());
    String said = out.toString(StandardCharsets.UTF_8);
    for (String part :
        new String[] {"us, uk, eu and none", "1600 to 2100", "1, 2 or 3", "feet or"}) {
      assertTrue(said.contains(part), said);
    }
    assertTrue(said.contains("is there already"), said);
  }

  @Test
  void answersThatEndWriteNothing() {
    CommandTrouble t = assertThrows(CommandTrouble.class, () -> answers("Name", "us"));
    assertTrue(t.getMessage().contains("nothing was written"), t.getMessage());
  }
}
