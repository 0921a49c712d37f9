package holloway.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.housefile.Starter;
import holloway.look.Theme;
import holloway.pipeline.Answers;
import holloway.pipeline.Pipeline;
import holloway.pipeline.PlanSettings;
import holloway.pipeline.Progress;
import holloway.pipeline.Thoroughness;
import holloway.report.Ink;
import holloway.report.Sheet;
import holloway.view.Storey;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is written into the pictures of a German pack is German. */
class GermanPicturesTest {
  @TempDir Path folder;

  private final Set<String> drawn = new HashSet<>();
  private int texts;

  /** Pieces of what was said already are given again, line by line. */
  private String say(String text, Spoken german) {
    String whole = text.replaceAll("\u2026$", "").strip();
    if (drawn.stream().anyMatch(d -> d.contains(whole))) {
      return text;
    }
    texts++;
    String said = german.text(text);
    drawn.add(said);
    return said;
  }

  @Test
  void everyTextOfAPictureIsKnownInGerman() throws Exception {
    String given = System.getProperty("holloway.pack.house", "");
    known(
        given.isEmpty()
            ? Starter.text("house.schema.json", "First House", "us", 1985, 1, false)
            : Files.readString(Path.of(given)));
  }

  /** Its own north is told apart from the real one. */
  @Test
  void thoseOfATurnedHouseToo() throws Exception {
    known(
        Starter.text("house.schema.json", "First House", "us", 1985, 1, false)
            .replaceFirst("(?m)^place: us", "turned: 23.5 deg clockwise\nplace: us"));
    assertTrue(drawn.stream().anyMatch(d -> d.contains("eigene Norden")), "north is not told");
    assertTrue(
        drawn.stream()
            .anyMatch(d -> d.matches("Blick nach .*, nach dem eigenen Norden des Hauses")),
        "north of a wall's hole is not told");
  }

  private void known(String text) throws Exception {
    Path file = folder.resolve("house.yaml");
    Files.writeString(file, text);
    PlanSettings quick = new PlanSettings(Optional.empty(), Thoroughness.QUICK, Optional.empty());
    Answers.Packed p = new Pipeline(Progress.SILENT).pack(file, quick);
    Answers.Planned a = p.planned();
    Spoken german =
        Spoken.of(
            new Sheet(a.plan(), a.placed(), a.request(), a.cards(), true, a.system(), Ink.PLAIN),
            Language.GERMAN);
    var pictures = new holloway.view.Pictures(p.house().orElseThrow());
    var paper =
        new holloway.view.Pictures.Paper(
            1600, 1200, Theme.LIGHT, (t, s, b) -> t.length() * s / 2, t -> say(t, german));
    for (Storey s : pictures.model().storeys()) {
      pictures.level(s.name(), paper).orElseThrow();
    }
    a.plan().holes().forEach(h -> pictures.hole(h.id(), paper).orElseThrow());
    assertTrue(texts > 50, texts + " texts");
    assertEquals(Set.of(), german.missed());
  }
}
