package holloway.schedule;

import holloway.geometry.Point3;
import holloway.house.Side;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Where the cut-out of an outlet, or the back of the cabinet, goes. Lengths in nanometres.
 *
 * @param side which wall of the room; for a ceiling the room is all that counts
 * @param face which face of that side, from 1 at its west or south end
 * @param fromLow from the face's west or south end (for a ceiling: from the room's west side)
 * @param fromHigh from the face's east or north end (for a ceiling: from the room's south side)
 * @param height of the middle over the room's floor; the ceiling's height for a ceiling
 * @param spot which of the wanted spots was taken, from 1; empty when there was one only
 * @param moved from the wanted spot towards the east or north, so that no stud is met
 * @param at where its cables end in the world, empty without a run
 * @param spares how many of the cables are for later
 */
public record OutletPlace(
    String name,
    Kind kind,
    String room,
    Side side,
    int face,
    long fromLow,
    long fromHigh,
    long height,
    OptionalInt spot,
    boolean ranged,
    long moved,
    List<String> cables,
    int spares,
    boolean routed,
    Optional<Point3> at) {
  /** What it is fixed to. */
  public enum Kind {
    CABINET,
    WALL,
    CEILING,
    OUTSIDE
  }

  public OutletPlace {
    cables = List.copyOf(cables);
  }
}
