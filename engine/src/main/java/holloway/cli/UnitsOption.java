package holloway.cli;

import holloway.house.House;
import holloway.report.UnitWords;
import holloway.units.UnitSystem;
import java.util.Optional;
import picocli.CommandLine.Option;

/** What the lengths of an answer are worded in. */
public final class UnitsOption {
  @Option(
      names = "--units",
      paramLabel = "UNITS",
      converter = Choices.Units.class,
      description = "ft-in or metric (else ft-in in the US, metric elsewhere)")
  Optional<UnitSystem> asked = Optional.empty();

  UnitSystem of(House house) {
    return asked.orElse(UnitWords.usual(house));
  }
}
