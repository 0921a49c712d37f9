package holloway.limits;

import holloway.geometry.Point3;
import java.util.List;

/**
 * What one cable is pulled with along a way, and what it bears: newtons (E16 to E20, A2-1, A2-2).
 * Friction is generic (dry, 0.5), and weights other than A8-9 to A8-12 are from memory.
 *
 * @param newtons at the far end
 * @param turns radians of all turns together
 */
public record PullForce(double newtons, double turns) {

  /** Along points of the world in the order of the pull, fed in without a pull. */
  public static PullForce along(String cable, List<Point3> path) {
    Capstan c =
        new Capstan(SignalFigures.FRICTION.value(), Capstan.poundsPerThousandFeet(pounds(cable)));
    Stretches line = Stretches.of(path);
    double pull = 0;
    double turns = 0;
    for (int i = 0; i < line.size(); i++) {
      pull = c.straight(pull, line.metres(i), line.rise(i));
      if (i + 1 < line.size()) {
        double angle = line.angleAfter(i);
        pull = c.turn(pull, angle);
        turns += angle;
      }
    }
    return new PullForce(pull, turns);
  }

  /**
   * Through a tube of which its length and turns are known, and not where along it they lie: all of
   * its length first, which is the worst.
   *
   * @param rise of its far end over the near one, metres; what falls helps nobody here
   */
  public static PullForce tube(String cable, double metres, int degrees, double rise) {
    Capstan c =
        new Capstan(SignalFigures.FRICTION.value(), Capstan.poundsPerThousandFeet(pounds(cable)));
    double up = Math.min(metres, Math.max(0, rise));
    double angle = Math.toRadians(degrees);
    return new PullForce(c.turn(c.straight(0, metres, up), angle), angle);
  }

  /** What a cable may be pulled with. */
  public static double most(boolean fibre) {
    return (fibre ? CablingFigures.PULL_FIBRE : CablingFigures.PULL_COPPER).value() * Capstan.POUND;
  }

  /** Pounds a thousand feet. */
  private static double pounds(String cable) {
    return switch (cable) {
      case "cat5e" -> 19.4;
      case "cat6", "outdoor-cat6" -> 29.1;
      case "cat6a" -> 47.3;
      case "rg6" -> 30;
      default -> 12.8;
    };
  }
}
