package holloway.house;

import holloway.units.Length;
import java.util.Optional;

/**
 * A service layer: battens on the lining that a framed wall has already, and a lining of their own
 * before them. Nobody sees where they are: unless the first is stated they are taken to stand on
 * the studs, or to lie at their spacing from the floor up.
 *
 * @param side towards the rooms whose side this is; none: towards the rooms of both
 * @param depth from what lies behind them to the back of the lining before them
 * @param every from middle to middle
 * @param level they run level, so that cable passes along the wall; else upright
 * @param first height of the middle of one level batten over the floor
 * @param over the lining on the studs, which they are fixed through
 */
public record Battens(
    Optional<Side> side,
    Fact<Length> depth,
    Optional<Fact<Length>> every,
    boolean level,
    Optional<Fact<Length>> first,
    WallTraits.Layer over) {
  /** Usual spacing of level ones, 24 in; common practice, no published source. */
  public static final Length EVERY = Length.inches(24, 1);

  /** What both take up before the studs, nanometres. */
  public long nm() {
    return depth.value().nm() + over.thickness().value().nm();
  }
}
