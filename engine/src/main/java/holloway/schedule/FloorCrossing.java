package holloway.schedule;

import java.util.List;

/**
 * A place where cable passes the top of a floor, or the foot of an attic, cut upright through it.
 *
 * @param above name of the level above the floor, or id of the attic
 * @param attic whether it is an attic
 * @param hole label of the hole that is made there; empty where something open is used
 * @param below what the cable lies in under the floor, as the plan words it; {@code over} above it
 * @param runs ids of the runs, in the plan's order
 * @param right where right is: a compass word
 * @param solids what is cut, millimetres right and up of where the cable passes
 * @param cable the way of the first run through the picture, in the same measure
 */
public record FloorCrossing(
    String above,
    boolean attic,
    String hole,
    String below,
    String over,
    List<String> runs,
    String right,
    List<HoleView.Shape> solids,
    List<double[]> cable) {
  public FloorCrossing {
    runs = List.copyOf(runs);
    solids = List.copyOf(solids);
    cable = List.copyOf(cable);
  }
}
