package holloway.house;

import holloway.units.Length;

/**
 * An existing empty tube between two boxes that a hand can get at; {@code bends} counts quarter
 * turns, {@code length} along the tube.
 */
public record Conduit(
    String name,
    WallSpot from,
    WallSpot to,
    Length insideDiameter,
    int bends,
    Fact<Length> length,
    Where where) {}
