package holloway.cli;

import holloway.drawing.FloorDrawing;
import holloway.pipeline.Answers;
import holloway.pipeline.Thoroughness;
import holloway.report.CsvFiles;
import holloway.report.Documents;
import holloway.report.Ink;
import holloway.report.PlanText;
import holloway.report.Sheet;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Plans every run of a house together. */
@Command(
    name = "plan",
    header = "find the routes and holes of least work",
    customSynopsis = "holloway plan HOUSE [OPTIONS]")
final class PlanVerb implements Callable<Integer> {
  @Parameters(paramLabel = "HOUSE", description = "the house file (YAML or JSON)")
  Path house;

  @Option(names = "--json", description = "print the plan as JSON and nothing else")
  boolean json;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description =
          "write plan.json, plan.txt, four lists (CSV) and the runs drawn over each level there, all or none")
  Optional<Path> folder = Optional.empty();

  @Option(names = "--steps", description = "a line for every leg and hole of every run")
  boolean steps;

  @Option(
      names = "--certificate",
      description = "put the proof of the bound into the JSON, for check to recompute")
  boolean certificate;

  @Mixin HouseOptions about;
  @Mixin UnitsOption units;
  @Mixin SearchOptions search;
  @Mixin HelpOption help;

  private final Surroundings around;

  PlanVerb(Surroundings around) {
    this.around = around;
  }

  @Override
  public Integer call() {
    if (certificate && !json && folder.isEmpty()) {
      throw new CommandTrouble(
          "--certificate is part of the JSON; ask for --json or --out DIR too");
    }
    Answers.Planned answer =
        around
            .pipeline()
            .plan(house, search.settings(about, units, Thoroughness.USUAL, certificate));
    if (around.refuses(answer, "it is not shown")) {
      return ExitCode.REFUSED;
    }
    String document =
        Documents.plan(
            answer.plan(), answer.cards(), answer.placed(), answer.request(), answer.certificate());
    String shown = json ? document : text(answer, around.ink());
    folder.ifPresent(f -> write(f, answer, document));
    around.print(shown);
    return ExitCode.of(answer.plan());
  }

  private String text(Answers.Planned a, Ink ink) {
    return PlanText.of(
        new Sheet(a.plan(), a.placed(), a.request(), a.cards(), steps, a.system(), ink));
  }

  private void write(Path to, Answers.Planned answer, String document) {
    TreeMap<String, byte[]> files = new TreeMap<>();
    files.put("plan.json", document.getBytes(StandardCharsets.UTF_8));
    files.put("plan.txt", text(answer, Ink.PLAIN).getBytes(StandardCharsets.UTF_8));
    FloorDrawing.of(answer.placed(), answer.request(), answer.plan(), answer.system())
        .forEach((name, svg) -> files.put(name, svg.getBytes(StandardCharsets.UTF_8)));
    CsvFiles.of(answer.plan(), answer.placed(), answer.request(), answer.cards())
        .forEach((name, text) -> files.put(name, text.getBytes(StandardCharsets.UTF_8)));
    new OutFolder(to).write(files);
  }
}
