package holloway.request;

import holloway.house.CeilingSpot;
import holloway.house.WallSpot;
import holloway.units.Length;
import java.util.Optional;

/** Where an outlet goes. */
public sealed interface Spot {
  /**
   * On a face; {@code upTo} is the far end of the range if the person does not mind where (same end
   * of the face as {@code at.along}).
   */
  record OnWall(WallSpot at, Optional<Length> upTo) implements Spot {}

  record OnCeiling(CeilingSpot at) implements Spot {}

  /** On the outside of the wall behind a face of a room. */
  record Outside(WallSpot at) implements Spot {}
}
