package holloway.survey;

import holloway.geometry.Frame;
import holloway.house.LayoutCorner;
import holloway.house.Side;

/**
 * Which end of a wall its studs are counted from: the one that lies towards the corner that layouts
 * begin at, along the axis that the wall mostly runs along. An angled wall's u may run from north
 * to south, so its upper end is not always the northern one.
 */
public final class LaidOut {
  /** A wall at 45 degrees runs along both axes: it is counted as one that runs east-west. */
  private static final double LEAN = 1e-6;

  private LaidOut() {}

  /** The side of the house that the layout of a wall with this frame begins at. */
  static Side from(LayoutCorner layout, Frame wall) {
    return layout.from(isEastWest(wall));
  }

  /** Is it counted down from the wall's upper end? */
  public static boolean fromHigh(LayoutCorner layout, Frame wall) {
    boolean eastWest = isEastWest(wall);
    boolean upward = (eastWest ? wall.u().x() : wall.u().y()) > 0;
    return layout.isFromHigh(eastWest) == upward;
  }

  private static boolean isEastWest(Frame wall) {
    return Math.abs(wall.u().x()) > Math.abs(wall.u().y()) - LEAN;
  }
}
