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
 */
public record PlanSettings(
    Optional<Profile> profile,
    Search search,
    Optional<UnitSystem> units,
    boolean certify,
    Optional<Path> prices) {
  /** Without the certificate, with the prices of the house file if it names any. */
  public PlanSettings(
      Optional<Profile> profile, Thoroughness thoroughness, Optional<UnitSystem> units) {
    this(profile, new Search(thoroughness), units, false, Optional.empty());
  }

  public static final PlanSettings USUAL =
      new PlanSettings(Optional.empty(), Thoroughness.USUAL, Optional.empty());
}
