package holloway.house;

import holloway.units.Length;
import java.util.Locale;
import java.util.Optional;

/**
 * A dormer in one slope of a roof, taped from the attic below it, or from the room with a knee wall
 * that goes out into it; all sizes are clear inside.
 *
 * @param side the eave that its slope comes down to
 * @param from along that eave, from the outer face of the studs at an end of the roof to the nearer
 *     cheek; in a room from the room's end
 * @param width between its cheeks
 * @param back level, from the outer face of the wall below the eave to the inside of its front; in
 *     a room from the face of the knee wall out to the inside of its front
 * @param height at its front, from the tops of the ceiling joists, in a room from its floor, to the
 *     underside of its own roof
 * @param room whose knee wall stops at its cheeks
 */
public record Dormer(
    Side side,
    Along from,
    Fact<Length> width,
    Fact<Length> back,
    Fact<Length> height,
    Cover cover,
    Optional<String> room,
    Where where) {
  /** What lies over it. */
  public enum Cover {
    GABLE,
    SHED;

    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }
}
