package holloway.importing;

import holloway.step.StepEntity;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * How the model's own grid lies to the compass, where it says so (TrueNorth of a geometric
 * representation context). The house is described in the model's grid, which drawings share.
 */
final class TrueNorth {
  private static final int TRUE_NORTH = 5;

  /** Less is not worth a word, degrees. */
  private static final double LEAST = 0.005;

  private final Model model;

  TrueNorth(Model model) {
    this.model = model;
  }

  Optional<String> words() {
    for (StepEntity e : model.all(List.of("IFCGEOMETRICREPRESENTATIONCONTEXT"))) {
      Optional<Vec> north = model.maybe(e, TRUE_NORTH).map(model::direction);
      if (north.isPresent()) {
        double degrees = Math.toDegrees(StrictMath.atan2(-north.get().x(), north.get().y()));
        return Math.abs(degrees) < LEAST ? Optional.empty() : Optional.of(words(degrees));
      }
    }
    return Optional.empty();
  }

  private static String words(double degrees) {
    return String.format(
        Locale.ROOT,
        "By the model, true north lies %.2f degrees %s of its grid's own.",
        Math.abs(degrees),
        degrees > 0 ? "counter-clockwise" : "clockwise");
  }
}
