package holloway.survey;

import holloway.geometry.Interval;
import java.util.List;

/** Rooms that lie too far apart to be one house. */
final class Extent {
  /** From the outermost room to the outermost on the other side, metres. */
  static final int MOST_METRES = 150;

  private static final long NM_PER_METRE = 1_000_000_000L;

  private Extent() {}

  static void check(List<PlacedRoom> rooms, Problems problems) {
    if (rooms.isEmpty()) {
      return;
    }
    PlacedRoom first = rooms.get(0);
    for (PlacedRoom r : rooms) {
      long east = far(first.outline().xRange(), r.outline().xRange());
      long north = far(first.outline().yRange(), r.outline().yRange());
      if (Math.max(east, north) > MOST_METRES * NM_PER_METRE) {
        problems.add(
            r.room().where(),
            "room %s lies %d m from room %s; a house is at most %d m long. Is a unit wrong?",
            r.name(),
            Math.max(east, north) / NM_PER_METRE,
            first.name(),
            MOST_METRES);
      }
    }
  }

  /** Over both, end to end. */
  private static long far(Interval a, Interval b) {
    return Math.max(a.hi(), b.hi()) - Math.min(a.lo(), b.lo());
  }
}
