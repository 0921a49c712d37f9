package holloway.survey;

/**
 * A spot resolved: the wall, the side it is on, distance along and height in the wall's frame
 * (nanometres).
 */
public record OnWall(Wall wall, int side, long s, long z) {}
