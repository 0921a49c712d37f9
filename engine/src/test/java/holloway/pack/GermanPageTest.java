package holloway.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.housefile.Starter;
import holloway.pipeline.Answers;
import holloway.pipeline.Pipeline;
import holloway.pipeline.PlanSettings;
import holloway.pipeline.Progress;
import holloway.pipeline.Thoroughness;
import holloway.report.CsvFiles;
import holloway.report.Ink;
import holloway.report.Sheet;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * No English sentence is left on a German page. The house of {@code start} always; {@code
 * -Dholloway.samples=all} looks at every sample.
 */
class GermanPageTest {
  private static final Pattern NODE = Pattern.compile(">([^<>]+)<");

  private static final Pattern ENGLISH_UNIT = Pattern.compile("\\d (ft|in)\\b");

  /** To be copied into the house file, which has one way to write a length in feet. */
  private static final Pattern ENTRY = Pattern.compile("- \\{ chase: .* known: yes }");

  /** Spelled the same in both languages. */
  private static final Set<String> SAME =
      Set.of(
          "N", "min", "h", "m", "mm", "orange", "Pin", "Person", "T568A", "T568B", "sha", "item",
          "Table");

  @TempDir Path folder;

  static List<String> samples() {
    return "all".equals(System.getProperty("holloway.samples"))
        ? List.of("plumb-corner", "alder-lane", "tin-street", "quince-ranch", "wren-hollow")
        : List.of("first house", "second house", "a run without a way");
  }

  @ParameterizedTest
  @MethodSource("samples")
  void everySentenceIsGerman(String sample) throws Exception {
    PlanSettings quick = new PlanSettings(Optional.empty(), Thoroughness.QUICK, Optional.empty());
    Answers.Packed p =
        sample.equals("first house")
            ? PackedHouse.get()
            : new Pipeline(Progress.SILENT).pack(file(sample), quick);
    Answers.Planned a = p.planned();
    Sheet sheet =
        new Sheet(a.plan(), a.placed(), a.request(), a.cards(), true, a.system(), Ink.PLAIN);
    Spoken german = Spoken.of(sheet, Language.GERMAN);
    assertEquals(sample.startsWith("a run"), !a.plan().unrouted().isEmpty());
    List<String> said = nodes(page(sheet, p, german));
    lists(sheet, german);
    Set<String> english = new TreeSet<>(nodes(page(sheet, p, Spoken.of(sheet, Language.ENGLISH))));
    assertEquals(Set.of(), german.missed());
    assertTrue(said.size() > 300, said.size() + " pieces of text");
    said.forEach(s -> assertFalse(ENGLISH_UNIT.matcher(ENTRY.matcher(s).replaceAll("")).find(), s));
    Set<String> own = OwnNames.of(sheet);
    Set<String> left = new TreeSet<>();
    said.stream().filter(s -> english.contains(s) && !isSame(s, own)).forEach(left::add);
    assertEquals(Set.of(), left, "the same in both languages");
  }

  /** The same columns as in English, and what people read in them in German. */
  private static void lists(Sheet sheet, Spoken german) {
    CsvFiles.of(
            sheet.plan(), sheet.placed(), sheet.request(), sheet.cards(), UnaryOperator.identity())
        .forEach(
            (name, english) -> {
              String said =
                  CsvFiles.of(
                          sheet.plan(),
                          sheet.placed(),
                          sheet.request(),
                          sheet.cards(),
                          german::text)
                      .get(name);
              assertEquals(english.lines().findFirst(), said.lines().findFirst());
              assertEquals(english.lines().count(), said.lines().count());
              assertNotEquals(english, said, name);
            });
  }

  /** Two storeys in the UK, a house with a glass wall nothing gets to, or a sample. */
  private Path file(String sample) throws Exception {
    if (sample.startsWith("a run")) {
      String glass = "walls:\n  - { side: living room west, kind: glazed }\n";
      String chair =
          "outlets:\n  - { name: reading chair, in: living room, wall: west, from: south 5 ft,"
              + " height: 16 in, cables: [cat6] }\n";
      return Files.writeString(
          folder.resolve("glass.yaml"),
          Starter.text("house.schema.json", "Glass House", "us", 1985, 1, false)
              .replace("walls:\n", glass)
              .replace("outlets:\n", chair));
    }
    return sample.equals("second house")
        ? Files.writeString(
            folder.resolve("second.yaml"),
            Starter.text("house.schema.json", "Second House", "uk", 1975, 2, true))
        : Path.of("..", "samples", sample + ".yaml");
  }

  private static String page(Sheet sheet, Answers.Packed p, Spoken spoken) {
    Drawings drawings = Drawings.of(sheet, p.views(), spoken);
    Seen none = Seen.of(sheet.plan(), Pictures.none(""), spoken::inPicture);
    return PackPage.paper(PackFacts.of(sheet, p.work(), spoken, drawings, none), PaperSize.A4);
  }

  private static List<String> nodes(String page) {
    String text = page.replaceAll("(?s)<style>.*?</style>|<style[ >].*?</style>", "");
    List<String> out = new ArrayList<>();
    for (MatchResult m : NODE.matcher(text).results().toList()) {
      String node = m.group(1).replace("&#x27;", "'").replace("&amp;", "&").strip();
      if (node.matches("(?s).*\\p{L}.*")) {
        out.add(node);
      }
    }
    return out;
  }

  /** Names, numbers, clauses and letters only. */
  private static boolean isSame(String node, Set<String> own) {
    String rest = node;
    for (String name : own.stream().sorted((x, y) -> y.length() - x.length()).toList()) {
      // Whole words: "den" is no piece of "garden".
      rest = rest.replaceAll("(?<!\\p{L})" + Pattern.quote(name) + "(?!\\p{L})", " ");
    }
    rest = rest.replaceAll("\\([0-9a-f]{64}\\)|[\\w-]+\\.yaml", " ");
    for (String word : rest.split("[^\\p{L}\\d/.-]+")) {
      boolean cited = word.matches("[A-Z0-9][A-Z0-9./-]*.*") && word.matches(".*\\d.*|[A-Z]{2,}");
      boolean piece = own.stream().anyMatch(n -> List.of(n.split(" ")).contains(word));
      boolean cut = own.stream().anyMatch(n -> word.length() > 4 && n.startsWith(word));
      piece |= cut && node.contains(word + "…");
      if (word.matches(".*\\p{L}.*")
          && !cited
          && !piece
          && !SAME.contains(word)
          && word.length() > 2) {
        return false;
      }
    }
    return true;
  }
}
