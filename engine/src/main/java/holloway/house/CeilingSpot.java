package holloway.house;

/**
 * A spot on a room's ceiling (or floor): distances from two of its sides, one of WEST/EAST and one
 * of SOUTH/NORTH, taped to the centre.
 */
public record CeilingSpot(String room, Along eastWest, Along northSouth, Where where) {}
