package holloway.support;

import holloway.pipeline.PlanSettings;
import holloway.pipeline.Search;
import holloway.pipeline.Thoroughness;
import java.util.Optional;

/**
 * Searches that end early, for tests that ask whether a plan is sound or the same and not how good
 * it is: most of a quick search goes into its proof.
 */
public final class Rough {
  /** Ends once the plan is proven to be within half of the least; no clock, the same every time. */
  public static final PlanSettings SETTINGS =
      new PlanSettings(
          Optional.empty(),
          new Search(Thoroughness.QUICK, 0.5, Optional.empty(), () -> 0),
          Optional.empty(),
          false,
          Optional.empty());

  /** The same on the command line. */
  public static final String[] WORDS = {"--effort", "quick", "--until", "50%"};

  private Rough() {}
}
