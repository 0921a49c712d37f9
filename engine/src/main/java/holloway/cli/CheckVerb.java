package holloway.cli;

import holloway.drawing.FloorDrawing;
import holloway.pipeline.Answers;
import holloway.plan.Plan;
import holloway.report.Documents;
import holloway.report.HouseDocument;
import holloway.report.HouseText;
import holloway.report.RefereeText;
import holloway.request.Run;
import holloway.units.UnitSystem;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says what was understood of a house, or lets the referee look at a plan. */
@Command(
    name = "check",
    header = "what was understood of a house; or the referee on a plan",
    customSynopsis = "holloway check HOUSE [PLAN.json] [OPTIONS]")
final class CheckVerb implements Callable<Integer> {
  @Parameters(index = "0", paramLabel = "HOUSE", description = "the house file (YAML or JSON)")
  Path house;

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "PLAN.json",
      description = "a plan of that house, verified without the solver")
  Optional<Path> plan = Optional.empty();

  @Option(names = "--json", description = "print the answer as JSON and nothing else")
  boolean json;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "write a floor plan of each level there, plan-LEVEL.svg, all or none")
  Optional<Path> folder = Optional.empty();

  @Mixin HouseOptions about;
  @Mixin UnitsOption units;
  @Mixin HelpOption help;

  private final Surroundings around;

  CheckVerb(Surroundings around) {
    this.around = around;
  }

  @Override
  public Integer call() {
    return plan.map(this::referee).orElseGet(this::understood);
  }

  private int referee(Path planFile) {
    if (folder.isPresent()) {
      throw new CommandTrouble("--out is for the drawings of a house, not for a plan");
    }
    Answers.Refereed a = around.pipeline().referee(house, planFile, about.settings());
    around.print(
        json
            ? Documents.referee(a.plan(), a.refusals(), a.findings(), a.certified())
            : RefereeText.of(a.plan(), a.refusals(), a.findings(), a.certified(), around.ink()));
    if (!a.refusals().isEmpty()) {
      return ExitCode.REFUSED;
    }
    boolean law = a.findings().stream().anyMatch(Plan.FindingLine::breaksLaw);
    return law ? ExitCode.BREAKS_LAW : ExitCode.DONE;
  }

  private int understood() {
    Answers.Understood a = around.pipeline().understand(house, about.settings());
    UnitSystem system = units.of(a.placed().house());
    String shown =
        json
            ? HouseDocument.of(
                a.placed(), a.request().runs().stream().map(Run::id).toList(), a.findings())
            : HouseText.of(a.placed(), a.request(), a.findings(), system, around.ink());
    folder.ifPresent(f -> draw(f, a, system));
    around.print(shown);
    if (!json) {
      around.print(drawn());
    }
    return ExitCode.DONE;
  }

  private static void draw(Path to, Answers.Understood a, UnitSystem system) {
    TreeMap<String, byte[]> files = new TreeMap<>();
    FloorDrawing.of(a.placed(), a.request(), system)
        .forEach((name, svg) -> files.put(name, svg.getBytes(StandardCharsets.UTF_8)));
    new OutFolder(to).write(files);
  }

  private String drawn() {
    return folder
        .map(f -> "\nThe floor plans are in the folder named by --out; a browser shows them.\n")
        .orElse("\nA floor plan of each level to compare with: add --out DIR to this command.\n");
  }
}
