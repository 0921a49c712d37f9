package holloway.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.cli.Holloway;
import holloway.pipeline.Progress;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The help of the verbs that draw, compared as whole text. */
final class HelpOfPicturesTest {
  @ParameterizedTest
  @ValueSource(strings = {"picture", "view"})
  void eachVerb(String verb) throws IOException {
    Path kept =
        Path.of("src", "test", "resources", "holloway", "app", "help-%s.txt".formatted(verb));
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    PrintStream out = new PrintStream(said, true, StandardCharsets.UTF_8);
    int code =
        Holloway.run(
            new String[] {verb, "--help"},
            out,
            out,
            new ViewVerb(out, out, Progress.SILENT),
            new PictureVerb(out, Progress.SILENT));
    String text = said.toString(StandardCharsets.UTF_8);
    assertEquals(0, code, text);
    assertEquals(Files.readString(kept), text);
    assertTrue(text.lines().allMatch(l -> l.length() <= 80), text);
  }
}
