package holloway.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.schedule.Bring;
import holloway.schedule.Step;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class LanguageTest {
  private static final Pattern USED = Pattern.compile("\\{\\{t\\.([a-z-]+)\\}\\}");

  /** Chosen by the plan, not by the template. */
  private static final Set<String> BY_CODE =
      Set.of(
          "least",
          "test-copper",
          "test-coax",
          "test-fibre",
          "drawn.drill",
          "drawn.far",
          "drawn.nothing",
          "drawn.front",
          "pins.use-a",
          "pins.use-b",
          "severity.law",
          "severity.standard",
          "severity.practice",
          "severity.note");

  @Test
  void everyLanguageHasTheSameKeys() {
    assertEquals(Language.ENGLISH.texts().keySet(), Language.GERMAN.texts().keySet());
  }

  @Test
  void theTemplateUsesEveryKeyAndNoOther() throws IOException {
    Set<String> used = new TreeSet<>(BY_CODE);
    for (Step.Kind k : Step.Kind.values()) {
      used.add("step." + k.word());
    }
    for (Bring.Item i : Bring.Item.values()) {
      used.add("bring." + i.word());
    }
    try (InputStream in = Language.class.getResourceAsStream("pack.html")) {
      Matcher m = USED.matcher(new String(in.readAllBytes(), StandardCharsets.UTF_8));
      while (m.find()) {
        used.add(m.group(1));
      }
    }
    Set<String> keys = new TreeSet<>(Language.ENGLISH.texts().keySet());
    keys.removeIf(k -> k.startsWith(Sayings.KEY) || k.startsWith("unit."));
    assertEquals(keys, used);
  }

  /** A slot that is lost would lose a measure. */
  @Test
  void everySayingHasTheSameSlotsAndFigures() {
    Map<String, String> german = Language.GERMAN.texts();
    Set<String> said = new TreeSet<>();
    Language.ENGLISH
        .texts()
        .forEach(
            (key, text) -> {
              if (key.startsWith(Sayings.KEY)) {
                said.add(key);
                assertEquals(slots(text), slots(german.get(key)), key);
                assertTrue(Numbers.same(text, german.get(key)), key);
              }
            });
    assertTrue(said.size() > 500, said.size() + " sayings");
  }

  private static List<String> slots(String text) {
    return Pattern.compile("\\{[a-z]\\d\\}")
        .matcher(text)
        .results()
        .map(MatchResult::group)
        .sorted()
        .toList();
  }

  @Test
  void nothingIsLeftUntranslated() {
    // A few words are the same in both languages; a whole sentence never is.
    Language.ENGLISH
        .texts()
        .forEach(
            (key, text) -> {
              assertTrue(!text.isBlank(), key);
              // Slots with nothing but blanks and commas round them have no words.
              if (text.replaceAll("\\{[a-z]\\d\\}", "").strip().matches(".*[a-z]+ [a-z]+.*")) {
                assertNotEquals(text, Language.GERMAN.texts().get(key), key);
              }
            });
  }
}
