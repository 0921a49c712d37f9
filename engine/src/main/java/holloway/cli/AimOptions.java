package holloway.cli;

import holloway.pipeline.PlanSettings;
import holloway.pipeline.Search;
import holloway.pipeline.Thoroughness;
import holloway.request.Profile;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Options of every verb that looks for plans, also of one that goes on planning: what for, how. */
public class AimOptions {
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
      description = "how long to search: quick, usual or thorough (else usual; compare: quick)")
  Optional<Thoroughness> effort = Optional.empty();

  /** To plan by, with a search that ends by itself. */
  public PlanSettings settings(HouseOptions about, UnitsOption units) {
    Search search = new Search(effort.orElse(Thoroughness.USUAL));
    return new PlanSettings(profile, search, units.asked, false, about.prices, about.rules);
  }
}
