package holloway.house;

/**
 * A straight flight of stairs and the opening it rises through. The opening in the floor above is
 * as long and as wide as the flight.
 *
 * @param near the room it starts in, and its near edges taped from two sides of that room
 * @param size in plan, outside to outside
 * @param climbs the side its upper end lies on
 */
public record Stair(
    String name, CeilingSpot near, Room.Size size, Side climbs, Under under, Where where) {
  /** What is made of the space under it. */
  public enum Under {
    CLOSED,
    OPEN,
    CUPBOARD
  }
}
