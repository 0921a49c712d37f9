package holloway.house;

import holloway.units.Length;

/**
 * What already joins two boxes that a hand can get at: an empty tube, or an old cable that might
 * draw a new one in after it.
 *
 * @param insideDiameter of the tube, or of the narrowest hole that the old cable is seen to pass
 * @param bends quarter turns of a tube
 * @param length along the tube or the old cable
 */
public record Conduit(
    String name,
    WallSpot from,
    WallSpot to,
    Length insideDiameter,
    int bends,
    Fact<Length> length,
    Kind kind,
    Where where) {
  /** LOOSE_CABLE: known not to be stapled. FAST_CABLE: stapled, or nobody knows. */
  public enum Kind {
    TUBE,
    LOOSE_CABLE,
    FAST_CABLE
  }
}
