package holloway.pipeline;

import holloway.request.Profile;
import holloway.units.UnitSystem;
import java.nio.file.Path;
import java.util.Optional;

/**
 * What the command line may say over the house file; units are for the words of tape lines.
 *
 * @param certify hand on the certificate, once the checker has accepted it
 * @param prices a price file, before one that the house file names
 * @param rules a rule file, likewise
 */
public record PlanSettings(
    Optional<Profile> profile,
    Search search,
    Optional<UnitSystem> units,
    boolean certify,
    Optional<Path> prices,
    Optional<Path> rules) {
  /** By the rules of the house file. */
  public PlanSettings(
      Optional<Profile> profile,
      Search search,
      Optional<UnitSystem> units,
      boolean certify,
      Optional<Path> prices) {
    this(profile, search, units, certify, prices, Optional.empty());
  }

  /** The usual settings with a price file and by a rule file. */
  public static PlanSettings by(Optional<Path> prices, Optional<Path> rules) {
    PlanSettings u = USUAL;
    return new PlanSettings(u.profile, u.search, u.units, u.certify, prices, rules);
  }

  /** Without the certificate, with the prices of the house file if it names any. */
  public PlanSettings(
      Optional<Profile> profile, Thoroughness thoroughness, Optional<UnitSystem> units) {
    this(profile, new Search(thoroughness), units, false, Optional.empty());
  }

  public static final PlanSettings USUAL =
      new PlanSettings(Optional.empty(), Thoroughness.USUAL, Optional.empty());
}
