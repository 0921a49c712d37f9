package holloway.support;

import holloway.house.Direction;
import holloway.house.House;
import holloway.house.LayoutCorner;
import holloway.house.Side;
import holloway.request.Request;

/**
 * A house seen in a mirror, or turned by quarters: two mirrors make a turn. Assumed layouts are
 * counted from the corner that the old one becomes. What was found is not carried over.
 */
public enum Turned {
  /** The mirror lies south-west to north-east: east becomes north. */
  DIAGONALLY(Side.EAST, Side.NORTH, Side.WEST, Side.SOUTH),
  /** The mirror stands north-south: east becomes west. */
  EAST_FOR_WEST(Side.NORTH, Side.WEST, Side.SOUTH, Side.EAST),
  /** The mirror stands east-west: north becomes south. */
  NORTH_FOR_SOUTH(Side.SOUTH, Side.EAST, Side.NORTH, Side.WEST);

  private final Side[] becomes;

  /** What north, east, south and west become. */
  Turned(Side... becomes) {
    this.becomes = becomes;
  }

  Side of(Side s) {
    return becomes[s.ordinal()];
  }

  boolean swaps() {
    return this == DIAGONALLY;
  }

  Direction of(Direction d) {
    return swaps() ? d.across() : d;
  }

  LayoutCorner of(LayoutCorner c) {
    return LayoutCorner.between(of(c.from(true)), of(c.from(false)));
  }

  /** Does this mirror turn what is counted along an axis round? */
  boolean turnsBack(boolean eastWest) {
    return !swaps() && (this == EAST_FOR_WEST) == eastWest;
  }

  /** The house as it looks in this mirror. */
  public House of(House h) {
    return new TurnedHouse(new Mirror(this, h)).of(h);
  }

  /** What is wanted, at the same places of the turned house. */
  public Request of(Request r, House h) {
    return new TurnedWants(new Mirror(this, h)).of(r);
  }
}
