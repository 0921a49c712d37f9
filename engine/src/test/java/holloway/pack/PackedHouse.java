package holloway.pack;

import holloway.housefile.Starter;
import holloway.pipeline.Answers;
import holloway.pipeline.Pipeline;
import holloway.pipeline.PlanSettings;
import holloway.pipeline.Progress;
import holloway.pipeline.Thoroughness;
import holloway.report.Documents;
import holloway.report.Ink;
import holloway.report.Sheet;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.SortedMap;

/**
 * A house planned once for the tests of its pack: the one that {@code start} writes, or the file of
 * {@code -Dholloway.pack.house}.
 */
final class PackedHouse {
  private static Answers.Packed packed;

  private PackedHouse() {}

  static synchronized Answers.Packed get() {
    if (packed == null) {
      packed = plan();
    }
    return packed;
  }

  private static Answers.Packed plan() {
    String given = System.getProperty("holloway.pack.house", "");
    try {
      Path house = given.isEmpty() ? Files.createTempFile("first", ".yaml") : Path.of(given);
      if (given.isEmpty()) {
        Files.writeString(
            house, Starter.text("house.schema.json", "First House", "us", 1985, 1, false));
      }
      PlanSettings quick = new PlanSettings(Optional.empty(), Thoroughness.QUICK, Optional.empty());
      return new Pipeline(Progress.SILENT).pack(house, quick);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static String json() {
    Answers.Planned a = get().planned();
    return Documents.plan(a.plan(), a.cards(), a.placed(), a.request(), a.certificate());
  }

  private static Sheet sheet() {
    Answers.Planned a = get().planned();
    return new Sheet(a.plan(), a.placed(), a.request(), a.cards(), true, a.system(), Ink.PLAIN);
  }

  /** The files of the pack, without pictures of the house. */
  static SortedMap<String, byte[]> files(Language language, PaperSize paper) {
    PackForm form = new PackForm(language, paper);
    return Pack.files(
        sheet(), get().work(), get().views(), form, json(), Pictures.none("not asked for"));
  }

  /** The well-formed page that the PDF is made of. */
  static String paper(Language language, PaperSize paper) {
    Drawings drawings = Drawings.of(sheet(), get().views(), Spoken.of(sheet(), language));
    return PackPage.paper(
        PackFacts.of(sheet(), get().work(), Spoken.of(sheet(), language), drawings), paper);
  }
}
