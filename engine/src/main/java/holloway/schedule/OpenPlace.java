package holloway.schedule;

import holloway.geometry.Point3;

/**
 * Where something is opened for a hand that has no card of its own.
 *
 * @param id of the opening, the subject of its steps
 * @param room the room it is opened from
 * @param at behind the opening, world
 */
public record OpenPlace(String id, String room, On on, Point3 at) {
  /** What is opened. */
  public enum On {
    WALL,
    CEILING,
    FLOOR
  }
}
