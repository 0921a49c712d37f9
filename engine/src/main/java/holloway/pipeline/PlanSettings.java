package holloway.pipeline;

import holloway.request.Profile;
import java.util.Optional;

/** What the command line may say over the house file. */
public record PlanSettings(Optional<Profile> profile, Thoroughness thoroughness) {
  public static final PlanSettings USUAL = new PlanSettings(Optional.empty(), Thoroughness.USUAL);
}
