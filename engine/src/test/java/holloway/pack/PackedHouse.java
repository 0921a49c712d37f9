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
import holloway.support.PackedSample;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;

/**
 * A house planned once for the tests of its pack: the one that {@code start} writes, or the file of
 * {@code -Dholloway.pack.house}.
 */
final class PackedHouse {
  /** The house that {@code start} writes. */
  static final String FIRST = "first house";

  /** The sample that every run of the tests looks at: it is planned for other tests too. */
  static final String SMALL = "plumb-corner";

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
    if (!given.isEmpty()) {
      return plan(Path.of(given));
    }
    try {
      Path house = Files.createTempFile("first", ".yaml");
      try {
        return plan(file(house));
      } finally {
        Files.delete(house);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Answers.Packed plan(Path house) {
    PlanSettings quick = new PlanSettings(Optional.empty(), Thoroughness.QUICK, Optional.empty());
    return new Pipeline(Progress.SILENT).pack(house, quick);
  }

  /** Writes the house file that is planned here. */
  static Path file(Path to) throws IOException {
    String given = System.getProperty("holloway.pack.house", "");
    return Files.writeString(
        to,
        given.isEmpty()
            ? Starter.text("house.schema.json", "First House", "us", 1985, 1, false)
            : Files.readString(Path.of(given)));
  }

  /** By the name of a sample, or {@link #FIRST}. */
  static Answers.Packed of(String sample) {
    return sample.equals(FIRST) ? get() : PackedSample.get(sample);
  }

  /** What tests look at beside the first house: a sample always, with the property every sample. */
  static List<String> samples() {
    return "all".equals(System.getProperty("holloway.samples"))
        ? List.of(FIRST, "plumb-corner", "alder-lane", "tin-street", "quince-ranch", "wren-hollow")
        : List.of(FIRST, SMALL);
  }

  /** Writes the house file of one of them. */
  static Path file(String sample, Path to) throws IOException {
    return sample.equals(FIRST)
        ? file(to)
        : Files.writeString(
            to, Files.readString(Path.of("..", "samples").resolve(sample + ".yaml")));
  }

  static String json() {
    return json(get());
  }

  static String json(Answers.Packed p) {
    Answers.Planned a = p.planned();
    return Documents.plan(a.plan(), a.cards(), a.placed(), a.request(), a.certificate());
  }

  private static Sheet sheet(Answers.Packed p) {
    Answers.Planned a = p.planned();
    return new Sheet(a.plan(), a.placed(), a.request(), a.cards(), true, a.system(), Ink.PLAIN);
  }

  /** The files of the pack, without pictures of the house. */
  static SortedMap<String, byte[]> files(Language language, PaperSize paper) {
    return files(language, paper, Pictures.none("not asked for"));
  }

  static SortedMap<String, byte[]> files(Language language, PaperSize paper, Pictures pictures) {
    return files(get(), language, paper, pictures);
  }

  /** The same of another house. */
  static SortedMap<String, byte[]> files(
      Answers.Packed p, Language language, PaperSize paper, Pictures pictures) {
    PackForm form = new PackForm(language, paper);
    return Pack.files(sheet(p), p.work(), p.views(), form, json(p), pictures);
  }

  /** The well-formed page that the PDF is made of. */
  static String paper(Language language, PaperSize paper) {
    return paper(get(), language, paper);
  }

  /** The same of another house. */
  static String paper(Answers.Packed p, Language language, PaperSize paper) {
    Sheet sheet = sheet(p);
    Spoken spoken = Spoken.of(sheet, language);
    Drawings drawings = Drawings.of(sheet, p.views(), spoken);
    Seen seen = Seen.of(sheet.plan(), Pictures.none(""), spoken::inPicture);
    return PackPage.paper(PackFacts.of(sheet, p.work(), spoken, drawings, seen), paper);
  }
}
