package holloway.request;

import holloway.house.Along;
import holloway.house.CeilingSpot;
import holloway.house.Fact;
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
  record Outside(WallSpot at, Optional<Under> under) implements Spot {
    public Outside(WallSpot at) {
      this(at, Optional.empty());
    }
  }

  /**
   * Under the roof of a porch: the spot of its {@link Outside} is the place on the wall that lies
   * nearest, at the height of the porch's ceiling, and may lie past the end of the room's face.
   *
   * @param from from an end of the porch, along its wall
   * @param out from the outside of the wall
   */
  record Under(String porch, Along from, Fact<Length> out) {}

  /** Can it be slid along a wall? */
  default boolean slides() {
    return this instanceof OnWall || this instanceof Outside o && o.under().isEmpty();
  }
}
