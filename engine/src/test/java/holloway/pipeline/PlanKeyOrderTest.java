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
import java.util.Optional;
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
      String name = e.getKey() + ", order " + seed;
      same(name, e.getValue(), ShuffledKeys.of(e.getValue(), seed), Rough.SETTINGS);
      seed++;
    }
  }

  /** Searched to the end, with the whole of its proof. */
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
    PlanSettings quick = new PlanSettings(Optional.empty(), Thoroughness.QUICK, Optional.empty());
    same("outlets from last to first", text, turned, quick);
  }

  private void same(String name, String text, String shuffled, PlanSettings how) throws Exception {
    assertNotEquals(text, shuffled);
    String first = answer(text, how);
    assertTrue(first.contains("\"steps\""), name + " has no planned run, which proves little");
    assertEquals(first, answer(shuffled, how), name);
  }

  /** All that a plan prints: its JSON with hole cards and outlets, and its text. */
  private String answer(String text, PlanSettings how) throws Exception {
    Path file = Files.writeString(folder.resolve("house.yaml"), text);
    Answers.Planned a = new Pipeline(Progress.SILENT).plan(file, how);
    String json = Documents.plan(a.plan(), a.cards(), a.placed(), a.request());
    Sheet sheet =
        new Sheet(a.plan(), a.placed(), a.request(), a.cards(), true, a.system(), Ink.PLAIN);
    String bytes = json + "\n" + PlanText.of(sheet);
    String sum = a.plan().inputs().get(0).sha256();
    assertTrue(bytes.contains(sum), "the plan does not carry the checksum of its file");
    return bytes.replace(sum, "checksum");
  }
}
