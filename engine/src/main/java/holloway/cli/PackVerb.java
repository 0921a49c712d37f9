package holloway.cli;

import holloway.pack.Language;
import holloway.pack.Pack;
import holloway.pack.Pictures;
import holloway.pipeline.Answers;
import holloway.pipeline.PlanSettings;
import holloway.pipeline.Search;
import holloway.pipeline.Thoroughness;
import holloway.report.Documents;
import holloway.report.Ink;
import holloway.report.Sheet;
import holloway.units.UnitSystem;
import java.nio.file.Path;
import java.time.Duration;
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
      description = "en or de: the page's own words; what the plan says of the house is English")
  Language language = Language.ENGLISH;

  @Option(
      names = "--effort",
      paramLabel = "HOW",
      converter = Choices.Search.class,
      description = "how long to search: quick, usual or thorough")
  Thoroughness effort = Thoroughness.USUAL;

  @Option(
      names = "--units",
      paramLabel = "UNITS",
      converter = Choices.Units.class,
      description = "ft-in or metric (else ft-in in the US, metric elsewhere)")
  Optional<UnitSystem> units = Optional.empty();

  @Option(
      names = "--prices",
      paramLabel = "FILE",
      description = "a price file of yours: lengths sold, prices, a currency")
  Optional<Path> prices = Optional.empty();

  @Option(
      names = "--rules",
      paramLabel = "FILE",
      description = "a rule file of yours: figures of a local code over those of us, uk or none")
  Optional<Path> rules = Optional.empty();

  @Mixin HelpOption help;

  private final Surroundings around;

  PackVerb(Surroundings around) {
    this.around = around;
  }

  @Override
  public Integer call() {
    Search search = new Search(effort, 0, Optional.<Duration>empty(), System::nanoTime);
    Answers.Packed packed =
        around
            .pipeline()
            .pack(house, new PlanSettings(Optional.empty(), search, units, false, prices, rules));
    Answers.Planned a = packed.planned();
    if (around.refuses(a, "no pack is written")) {
      return ExitCode.REFUSED;
    }
    Sheet sheet =
        new Sheet(a.plan(), a.placed(), a.request(), a.cards(), true, a.system(), Ink.PLAIN);
    String json = Documents.plan(a.plan(), a.cards(), a.placed(), a.request(), a.certificate());
    try (Pictures pictures = pictures(packed)) {
      new OutFolder(folder)
          .write(Pack.files(sheet, packed.work(), packed.views(), language, json, pictures));
      if (!pictures.why().isEmpty()) {
        around.complain("the pack has no pictures of the house: " + pictures.why());
      }
    }
    around.print(
        "%s: the pack is in %s; open index.html on the phone, print pack.pdf%n"
            .formatted(a.plan().house(), folder.getFileName()));
    return PlanVerb.code(a.plan());
  }

  private Pictures pictures(Answers.Packed packed) {
    return packed
        .house()
        .map(around.pictures()::of)
        .orElseGet(() -> Pictures.none("there is no house to draw"));
  }
}
