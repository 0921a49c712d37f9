package holloway.framing;

import holloway.geometry.Box;
import holloway.geometry.Point2;
import holloway.house.Dormer;

/**
 * A dormer where it stands. Its ceiling is taken as level at the height of its front: what its own
 * roof rises above that is left out of account.
 *
 * @param clear between its cheeks, from the inside of its front to where the slope of the main roof
 *     is as high; from the tops of the ceiling joists up
 */
public record PlacedDormer(Dormer dormer, Box clear) {
  /** Within it in plan. */
  public boolean holds(Point2 p) {
    return clear.x().contains(p.x()) && clear.y().contains(p.y());
  }
}
