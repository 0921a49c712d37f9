package holloway.session;

import holloway.units.Length;
import holloway.units.UnitSystem;

/** One thing that the person wants otherwise than the files say; it can be undone. */
public sealed interface Change {
  /** In words, as a list shows it, lengths as the house's. */
  String says(UnitSystem units);

  /**
   * A hole or hollow, or a way of working, that no run may use.
   *
   * @param word its id
   * @param label as the person knows it, like H3
   */
  record Forbid(String word, String label) implements Change {
    @Override
    public String says(UnitSystem units) {
      return "forbid " + label;
    }
  }

  /** What was forbidden may be used again. */
  record Allow(String word, String label) implements Change {
    @Override
    public String says(UnitSystem units) {
      return "allow " + label + " again";
    }
  }

  /** A run has to go through a hollow, by its id. */
  record Pin(String run, String hollow, String label) implements Change {
    @Override
    public String says(UnitSystem units) {
      return run + " through " + label;
    }
  }

  /** A run may go where it is best. */
  record Unpin(String run) implements Change {
    @Override
    public String says(UnitSystem units) {
      return run + " wherever it is best";
    }
  }

  /** An outlet on a wall stands so many nanometres nearer to (under 0) or farther from its end. */
  record Slide(String outlet, long by) implements Change {
    @Override
    public String says(UnitSystem units) {
      return "slide "
          + outlet
          + " by "
          + units.format(new Length(Math.abs(by)))
          + " "
          + (by < 0 ? "towards" : "away from")
          + " the end it is taped from";
    }
  }
}
