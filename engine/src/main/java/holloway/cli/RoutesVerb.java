package holloway.cli;

import holloway.pipeline.Answers;
import holloway.report.Documents;
import holloway.report.RoutesText;
import holloway.units.UnitSystem;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lists several really different routes of one run. */
@Command(
    name = "routes",
    header = "several really different routes of one run",
    customSynopsis = "holloway routes HOUSE RUN [OPTIONS]")
final class RoutesVerb implements Callable<Integer> {
  @Parameters(index = "0", paramLabel = "HOUSE", description = "the house file (YAML or JSON)")
  Path house;

  @Parameters(
      index = "1",
      paramLabel = "RUN",
      description = "the run, for example \"office desk/cat6-1\"")
  String run;

  @Option(names = "--json", description = "print the routes as JSON and nothing else")
  boolean json;

  @Option(names = "--most", paramLabel = "N", description = "at most so many routes (usual: 5)")
  int most = 5;

  @Mixin HouseOptions about;
  @Mixin UnitsOption units;
  @Mixin HelpOption help;

  private final Surroundings around;

  RoutesVerb(Surroundings around) {
    this.around = around;
  }

  @Override
  public Integer call() {
    if (most < 1 || most > 100) {
      throw new CommandTrouble("--most: " + most + " is not from 1 to 100");
    }
    Answers.Routed answer = around.pipeline().routes(house, run, most, about.settings());
    UnitSystem system = units.of(answer.placed().house());
    around.print(
        json
            ? Documents.routes(answer.placed().house().name(), run, answer.routes())
            : RoutesText.of(run, answer.placed(), answer.routes(), system, around.ink()));
    return answer.routes().isEmpty() ? ExitCode.NO_ROUTE : ExitCode.DONE;
  }
}
