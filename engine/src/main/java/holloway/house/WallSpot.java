package holloway.house;

import holloway.units.Length;

/** A spot on a face: along it, and its centre height above that room's floor. */
public record WallSpot(FaceRef face, Along along, Fact<Length> height) {}
