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
  /**
   * Ends once a fifth of the plan's price is proven; no clock, the same every time. Half of it is
   * more than an early proof reaches in many random houses, which are then searched to the end.
   */
  public static final PlanSettings SETTINGS =
      new PlanSettings(
          Optional.empty(),
          new Search(Thoroughness.QUICK, 0.8, Optional.empty(), () -> 0),
          Optional.empty(),
          false,
          Optional.empty());

  /** The same on the command line. */
  public static final String[] WORDS = {"--effort", "quick", "--until", "80%"};

  private Rough() {}
}
