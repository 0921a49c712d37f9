package holloway.framing;

import holloway.survey.Placed;
import holloway.survey.Wall;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Which balloon-framed walls stand on each other in one line: their studs run through, without
 * plates at the floor between. A wall above takes the stud layout of the wall below.
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
          below.put(upper.id(), lower);
          above.put(lower.id(), upper);
        }
      }
    }
    return new BalloonLines(below, above);
  }

  private static boolean inLine(Wall lower, Wall upper) {
    if (Math.abs(lower.frame().u().x() - upper.frame().u().x()) > 1e-9) {
      return false;
    }
    var at = lower.frame().toLocal(upper.world(0, upper.core().lo(), 0));
    long end = at.x() + upper.length();
    return Math.abs(at.y() - lower.core().lo()) <= IN_LINE && at.x() < lower.length() && end > 0;
  }

  Optional<Wall> findBelow(Wall wall) {
    return Optional.ofNullable(below.get(wall.id()));
  }

  Optional<Wall> findAbove(Wall wall) {
    return Optional.ofNullable(above.get(wall.id()));
  }
}
