package holloway.framing;

import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Interval;
import holloway.geometry.Polygon2;
import holloway.house.Fact;
import holloway.house.Fill;
import holloway.house.FloorSpec;
import holloway.house.Timber;
import java.util.List;

/**
 * A joisted floor: frame with u along the joists (east or north), v across, z = 0 at the finished
 * floor of its level.
 *
 * @param level the level whose floor this is
 * @param outline world outline to the outer face of the rim
 * @param joistZ local z range of the joists, {@code subfloorZ} of the sheet or boards above
 * @param joists local v range of each joist, ascending (rims that run along the joists included)
 * @param bearings local u ranges of blocking over bearing walls
 * @param wells openings for stairs, local plan boxes
 */
public record Deck(
    String id,
    String level,
    Frame frame,
    Polygon2 outline,
    Fact<Timber> timber,
    Fact<Long> every,
    boolean layoutAssumed,
    Interval joistZ,
    Interval subfloorZ,
    List<Interval> joists,
    List<Interval> bearings,
    List<Box> wells,
    FloorSpec spec) {
  public Fill fill() {
    return spec.fill();
  }
}
