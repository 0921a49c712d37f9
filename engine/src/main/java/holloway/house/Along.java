package holloway.house;

import holloway.units.Length;

/**
 * A distance along a face, taped from its end on the given side (WEST or EAST for faces that run
 * east-west, else SOUTH or NORTH).
 */
public record Along(Side from, Fact<Length> distance) {}
