package holloway.framing;

import holloway.survey.Placed;
import holloway.survey.Wall;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Which balloon-framed walls stand on each other in one line: their studs run through, without
 * plates at the floor between, so they are as deep below as above. A wall above takes the stud
 * layout of the wall below; of several it is in line with the one that it shares most of its length
 * with.
 */
record BalloonLines(Map<String, Wall> below, Map<String, Wall> above) {
  private static final long IN_LINE = 30_000_000;

  static BalloonLines of(Placed placed) {
    Map<String, Wall> below = new HashMap<>();
    Map<String, Wall> above = new HashMap<>();
    for (Wall upper : placed.walls()) {
      for (Wall lower : placed.walls()) {
        boolean stacked = placed.getLevel(upper.level()).isNextOver(placed.getLevel(lower.level()));
        if (stacked
            && upper.balloon()
            && lower.balloon()
            && upper.isFramed()
            && lower.isFramed()
            && inLine(lower, upper)) {
          below.merge(upper.id(), lower, (a, b) -> shared(b, upper) > shared(a, upper) ? b : a);
          above.merge(lower.id(), upper, (a, b) -> shared(lower, b) > shared(lower, a) ? b : a);
        }
      }
    }
    return new BalloonLines(below, above);
  }

  private static boolean inLine(Wall lower, Wall upper) {
    if (Math.abs(lower.frame().u().x() - upper.frame().u().x()) > 1e-9) {
      return false;
    }
    long lo = lower.frame().toLocal(upper.world(0, upper.core().lo(), 0)).y();
    long hi = lower.frame().toLocal(upper.world(0, upper.core().hi(), 0)).y();
    return Math.abs(lo - lower.core().lo()) <= IN_LINE
        && Math.abs(hi - lower.core().hi()) <= IN_LINE
        && shared(lower, upper) > 0;
  }

  /** How much of the wall below lies under the wall above. */
  private static long shared(Wall lower, Wall upper) {
    long start = lower.frame().toLocal(upper.world(0, 0, 0)).x();
    return Math.min(start + upper.length(), lower.length()) - Math.max(start, 0);
  }

  Optional<Wall> findBelow(Wall wall) {
    return Optional.ofNullable(below.get(wall.id()));
  }

  Optional<Wall> findAbove(Wall wall) {
    return Optional.ofNullable(above.get(wall.id()));
  }
}
