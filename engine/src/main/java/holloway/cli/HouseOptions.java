package holloway.cli;

import holloway.pipeline.PlanSettings;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Options of every verb that reads a house: what holds over the words of its file. */
public final class HouseOptions {
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

  /** To read a house by, where nothing is searched for. */
  PlanSettings settings() {
    return PlanSettings.by(prices, rules);
  }
}
