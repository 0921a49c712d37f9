package holloway.pipeline;

import holloway.request.Profile;
import holloway.units.UnitSystem;
import java.util.Optional;

/** What the command line may say over the house file; units are for the words of tape lines. */
public record PlanSettings(
    Optional<Profile> profile, Thoroughness thoroughness, Optional<UnitSystem> units) {
  public static final PlanSettings USUAL =
      new PlanSettings(Optional.empty(), Thoroughness.USUAL, Optional.empty());
}
