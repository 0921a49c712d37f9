package holloway.cli;

import holloway.pipeline.Answers;
import holloway.pipeline.PlanSettings;
import holloway.pipeline.Thoroughness;
import holloway.report.CabinetText;
import holloway.report.CompareText;
import holloway.report.Documents;
import holloway.report.Way;
import holloway.units.UnitSystem;
import java.nio.file.Path;
import java.util.List;
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

  @Mixin HouseOptions about;
  @Mixin UnitsOption units;
  @Mixin SearchOptions search;
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
    UnitSystem system = units.of(answer.placed().house());
    around.print(json ? Documents.compare(ways) : CompareText.of(ways, system, around.ink()));
    return ways.get(0).plan().unrouted().isEmpty() ? ExitCode.DONE : ExitCode.NO_ROUTE;
  }

  private PlanSettings settings() {
    return search.settings(about, units, Thoroughness.QUICK, false);
  }

  private int places() {
    Answers.Cabinets answer = around.pipeline().cabinets(house, settings());
    List<CabinetText.Place> places =
        answer.places().stream()
            .map(p -> new CabinetText.Place(p.at(), p.stated(), p.plan(), p.warm(), p.awkward()))
            .toList();
    UnitSystem system = units.of(answer.placed().house());
    around.print(json ? CabinetText.json(places) : CabinetText.of(places, system, around.ink()));
    return places.get(0).plan().unrouted().isEmpty() ? ExitCode.DONE : ExitCode.NO_ROUTE;
  }
}
