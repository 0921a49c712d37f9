package holloway.cli;

import holloway.pipeline.Answers;
import holloway.pipeline.PlanSettings;
import holloway.pipeline.Search;
import holloway.pipeline.Thoroughness;
import holloway.report.CabinetText;
import holloway.report.CompareText;
import holloway.report.Documents;
import holloway.report.UnitWords;
import holloway.report.Way;
import holloway.request.Profile;
import holloway.units.UnitSystem;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Plans a house in each way of working and sets the plans side by side. */
@Command(
    name = "compare",
    header = "the best plan of each way of working, side by side",
    customSynopsis = "holloway compare HOUSE [OPTIONS]")
final class CompareVerb implements Callable<Integer> {
  @Parameters(paramLabel = "HOUSE", description = "the house file (YAML or JSON)")
  Path house;

  @Option(names = "--json", description = "print the ways as JSON and nothing else")
  boolean json;

  @Option(
      names = "--cabinet",
      description = "instead, the places where the cabinet could stand, best first")
  boolean cabinet;

  @Option(
      names = "--profile",
      paramLabel = "AIM",
      converter = Choices.Aim.class,
      description = "least-work, fewest-holes or shortest (else as the house file wishes)")
  Optional<Profile> profile = Optional.empty();

  @Option(
      names = "--effort",
      paramLabel = "HOW",
      converter = Choices.Search.class,
      description = "how long to search each way: quick, usual or thorough")
  Thoroughness effort = Thoroughness.QUICK;

  @Option(
      names = "--until",
      paramLabel = "SHARE",
      converter = Until.Share.class,
      description = "end each way once proven this near to its least, like 0.5%%")
  double until;

  @Option(
      names = "--at-most",
      paramLabel = "TIME",
      parameterConsumer = Until.Time.class,
      description =
          "end the search of each way after this time, like 30s or 2min; it may be another plan next time")
  Optional<Duration> atMost = Optional.empty();

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

  CompareVerb(Surroundings around) {
    this.around = around;
  }

  @Override
  public Integer call() {
    if (cabinet) {
      return places();
    }
    Answers.Compared answer = around.pipeline().compare(house, settings());
    List<Way> ways =
        answer.ways().stream().map(w -> new Way(w.name(), w.bans(), w.sameAs(), w.plan())).toList();
    UnitSystem system = units.orElse(UnitWords.usual(answer.placed().house()));
    around.print(json ? Documents.compare(ways) : CompareText.of(ways, system, around.ink()));
    return ways.get(0).plan().unrouted().isEmpty() ? ExitCode.DONE : ExitCode.NO_ROUTE;
  }

  private PlanSettings settings() {
    Search search = new Search(effort, until, atMost, System::nanoTime);
    return new PlanSettings(profile, search, units, false, prices, rules);
  }

  private int places() {
    Answers.Cabinets answer = around.pipeline().cabinets(house, settings());
    List<CabinetText.Place> places =
        answer.places().stream()
            .map(p -> new CabinetText.Place(p.at(), p.stated(), p.plan(), p.warm(), p.awkward()))
            .toList();
    UnitSystem system = units.orElse(UnitWords.usual(answer.placed().house()));
    around.print(json ? CabinetText.json(places) : CabinetText.of(places, system, around.ink()));
    return places.get(0).plan().unrouted().isEmpty() ? ExitCode.DONE : ExitCode.NO_ROUTE;
  }
}
