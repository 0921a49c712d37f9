package holloway.house;

import holloway.units.Length;

/**
 * A beam across a room from side to side: below its ceiling, within the depth of the joists over
 * it, or partly in both. Nobody bores it.
 *
 * @param from the side and distance to its middle, square to the way it runs
 * @param width as it is seen, lining included
 * @param drop how far its underside hangs below the ceiling, nothing for one within the joists
 * @param height from its underside to its top
 */
public record Beam(
    String name,
    String room,
    Direction run,
    Along from,
    Fact<Length> width,
    Fact<Length> drop,
    Fact<Length> height,
    Made made,
    Where where) {
  /** What it is of. */
  public enum Made {
    TIMBER,
    STEEL,
    CONCRETE
  }
}
