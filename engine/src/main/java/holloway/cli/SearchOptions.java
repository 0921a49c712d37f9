package holloway.cli;

import holloway.pipeline.PlanSettings;
import holloway.pipeline.Search;
import holloway.pipeline.Thoroughness;
import holloway.request.Profile;
import java.time.Duration;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Options of every verb that looks for plans: what for, and how long. */
public final class SearchOptions {
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

  @Option(
      names = "--until",
      paramLabel = "SHARE",
      converter = Until.Share.class,
      description = "end once proven this near to the least, like 0.5%%")
  double until;

  @Option(
      names = "--at-most",
      paramLabel = "TIME",
      parameterConsumer = Until.Time.class,
      description =
          "end the search after this time, like 30s or 2min; the plan then says so, and may be another one next time")
  Optional<Duration> atMost = Optional.empty();

  /** To plan by, with the search ended as it was asked. */
  public PlanSettings settings(HouseOptions about, UnitsOption units) {
    return settings(about, units, Thoroughness.USUAL, false);
  }

  /**
   * To plan by.
   *
   * @param units for the words of tape lines
   * @param usual the effort where none is asked for
   * @param certify hand on the certificate too
   */
  PlanSettings settings(
      HouseOptions about, UnitsOption units, Thoroughness usual, boolean certify) {
    Search search = new Search(effort.orElse(usual), until, atMost, System::nanoTime);
    return new PlanSettings(profile, search, units.asked, certify, about.prices, about.rules);
  }
}
