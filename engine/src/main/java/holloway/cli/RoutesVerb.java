package holloway.cli;

import holloway.pipeline.Answers;
import holloway.pipeline.PlanSettings;
import holloway.report.Documents;
import holloway.report.RoutesText;
import holloway.report.UnitWords;
import holloway.units.UnitSystem;
import java.nio.file.Path;
import java.util.Optional;
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

  RoutesVerb(Surroundings around) {
    this.around = around;
  }

  @Override
  public Integer call() {
    if (most < 1 || most > 100) {
      throw new CommandTrouble("--most: " + most + " is not from 1 to 100");
    }
    Answers.Routed answer =
        around.pipeline().routes(house, run, most, PlanSettings.by(prices, rules));
    UnitSystem system = units.orElse(UnitWords.usual(answer.placed().house()));
    around.print(
        json
            ? Documents.routes(answer.placed().house().name(), run, answer.routes())
            : RoutesText.of(run, answer.placed(), answer.routes(), system, around.ink()));
    return answer.routes().isEmpty() ? ExitCode.NO_ROUTE : ExitCode.DONE;
  }
}
