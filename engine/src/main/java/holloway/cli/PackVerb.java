package holloway.cli;

import holloway.pack.Language;
import holloway.pack.Pack;
import holloway.pack.PackForm;
import holloway.pack.PaperSize;
import holloway.pack.Pictures;
import holloway.pipeline.Answers;
import holloway.pipeline.Thoroughness;
import holloway.report.Documents;
import holloway.report.Ink;
import holloway.report.Sheet;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Plans a house and writes the work pack. */
@Command(
    name = "pack",
    header = "write the work pack: a page for the phone, a PDF and the lists",
    customSynopsis = "holloway pack HOUSE --out DIR [OPTIONS]")
final class PackVerb implements Callable<Integer> {
  @Parameters(paramLabel = "HOUSE", description = "the house file (YAML or JSON)")
  Path house;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      required = true,
      description =
          "write index.html, pack.pdf, plan.json, four lists (CSV) and drawings (SVG) there, all or none")
  Path folder;

  @Option(
      names = "--language",
      paramLabel = "WHICH",
      converter = Choices.PackLanguage.class,
      description =
          "en or de: the page, the paper, the drawings and the lists; the lists' headings and plan.json"
              + " are English")
  Language language = Language.ENGLISH;

  @Option(
      names = "--paper",
      paramLabel = "SIZE",
      converter = Choices.Paper.class,
      description = "a4 or letter: the sheets of pack.pdf (else letter in the US, a4 elsewhere)")
  Optional<PaperSize> paper = Optional.empty();

  @Mixin HouseOptions about;
  @Mixin UnitsOption units;
  @Mixin SearchOptions search;
  @Mixin HelpOption help;

  private final Surroundings around;

  PackVerb(Surroundings around) {
    this.around = around;
  }

  @Override
  public Integer call() {
    Answers.Packed packed =
        around.pipeline().pack(house, search.settings(about, units, Thoroughness.USUAL, false));
    Answers.Planned a = packed.planned();
    if (around.refuses(a, "no pack is written")) {
      return ExitCode.REFUSED;
    }
    Sheet sheet =
        new Sheet(a.plan(), a.placed(), a.request(), a.cards(), true, a.system(), Ink.PLAIN);
    PackForm form = new PackForm(language, paper.orElse(PaperSize.usual(a.placed().house())));
    String json = Documents.plan(a.plan(), a.cards(), a.placed(), a.request(), a.certificate());
    try (Pictures pictures = pictures(packed)) {
      new OutFolder(folder)
          .write(
              Pack.files(sheet, packed.work(), packed.views(), form, json, pictures),
              Pack::isDrawn);
      if (!pictures.why().isEmpty()) {
        around.complain("the pack has no pictures of the house: " + pictures.why());
      }
    }
    around.print(
        "%s: the pack is in %s; open index.html on the phone, print pack.pdf%n"
            .formatted(a.plan().house(), folder.getFileName()));
    return ExitCode.of(a.plan());
  }

  private Pictures pictures(Answers.Packed packed) {
    return packed
        .house()
        .map(around.pictures()::of)
        .orElseGet(() -> Pictures.none("there is no house to draw"));
  }
}
