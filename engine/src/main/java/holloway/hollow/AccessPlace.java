package holloway.hollow;

import holloway.geometry.Point3;
import holloway.house.Lining;

/**
 * Where a blind hollow could be opened for a hand, and made good again. Nothing is opened until a
 * plan says so.
 *
 * @param at inside the hollow, behind the opening
 * @param room the room it is opened from
 */
public record AccessPlace(
    String id, String hollow, Point3 at, String room, Kind kind, Lining lining) {
  /** What is opened. */
  public enum Kind {
    WALL_PATCH,
    CEILING_PATCH,
    LIFTED_BOARDS,
    DATA_BOX,
    REGISTER
  }
}
