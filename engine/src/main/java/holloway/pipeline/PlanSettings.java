package holloway.pipeline;

import holloway.request.Profile;
import holloway.units.UnitSystem;
import java.util.Optional;

/**
 * What the command line may say over the house file; units are for the words of tape lines.
 *
 * @param certify hand on the certificate, once the checker has accepted it
 */
public record PlanSettings(
    Optional<Profile> profile, Search search, Optional<UnitSystem> units, boolean certify) {
  /** Without the certificate. */
  public PlanSettings(
      Optional<Profile> profile, Thoroughness thoroughness, Optional<UnitSystem> units) {
    this(profile, new Search(thoroughness), units, false);
  }

  public static final PlanSettings USUAL =
      new PlanSettings(Optional.empty(), Thoroughness.USUAL, Optional.empty());
}
