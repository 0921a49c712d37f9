package holloway.pipeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.report.Documents;
import holloway.report.Ink;
import holloway.report.PlanText;
import holloway.report.Sheet;
import holloway.support.Chain;
import holloway.support.Rough;
import holloway.support.ShuffledKeys;
import holloway.support.TriedHouses;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The same house gives the same bytes whatever the order of the keys and outlets in its file. Only
 * the file's own checksum is left out, which differs with the file's bytes. {@code
 * -Dholloway.seeds=N} tries all samples and the random houses 1 to N.
 */
class PlanKeyOrderTest {
  @TempDir Path folder;

  @Test
  void theOrderOfKeysChangesNothing() throws Exception {
    long seed = 5;
    for (Map.Entry<String, String> e : TriedHouses.texts(1, 8, 9).entrySet()) {
      same(e.getKey() + ", order " + seed, e.getValue(), ShuffledKeys.of(e.getValue(), seed));
      seed++;
    }
  }

  @Test
  void theOrderOfOutletsChangesNothing() throws Exception {
    String text = Chain.sample("plumb-corner");
    String head = "\noutlets:\n";
    List<String> lines = new ArrayList<>();
    for (String line : text.substring(text.indexOf(head) + head.length()).split("\n")) {
      if (!line.startsWith("  - {")) {
        break;
      }
      lines.add(line);
    }
    assertTrue(lines.size() > 2, "one line an outlet");
    String listed = String.join("\n", lines);
    Collections.reverse(lines);
    String turned = text.replace(listed, String.join("\n", lines));
    same("outlets from last to first", text, turned);
  }

  private void same(String name, String text, String shuffled) throws Exception {
    assertNotEquals(text, shuffled);
    String first = answer(text);
    assertTrue(first.contains("\"steps\""), name + " has no planned run, which proves little");
    assertEquals(first, answer(shuffled), name);
  }

  /** All that a plan prints: its JSON with hole cards and outlets, and its text. */
  private String answer(String text) throws Exception {
    Path file = Files.writeString(folder.resolve("house.yaml"), text);
    Answers.Planned a = new Pipeline(Progress.SILENT).plan(file, Rough.SETTINGS);
    String json = Documents.plan(a.plan(), a.cards(), a.placed(), a.request());
    Sheet sheet =
        new Sheet(a.plan(), a.placed(), a.request(), a.cards(), true, a.system(), Ink.PLAIN);
    String bytes = json + "\n" + PlanText.of(sheet);
    String sum = a.plan().inputs().get(0).sha256();
    assertTrue(bytes.contains(sum), "the plan does not carry the checksum of its file");
    return bytes.replace(sum, "checksum");
  }
}
