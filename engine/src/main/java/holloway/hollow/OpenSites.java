package holloway.hollow;

import holloway.geometry.Point3;
import holloway.survey.OpenSide;
import java.util.List;

/**
 * Ways from one room's surface to the other's where they meet without a wall: along the wall that
 * the open side ends at, over the floor and, where no header hangs, under the ceiling.
 */
final class OpenSites {
  /** Cable clipped to a face lies this far off it. */
  private static final long OFF = 12_000_000;

  private static final long OVER_FLOOR = 60_000_000;
  private static final long UNDER_CEILING = 40_000_000;
  private static final long CABLE = 4_500_000;

  /** A step in the floor higher than this is no way on along the skirting. */
  private static final long STEP = 400_000_000;

  private OpenSites() {}

  static void find(Draft draft) {
    for (OpenSide o : OpenSide.of(draft.framed.placed())) {
      long floor = Math.max(o.first().floorZ(), o.second().floorZ());
      boolean level = Math.abs(o.first().floorZ() - o.second().floorZ()) <= STEP;
      for (boolean low : new boolean[] {true, false}) {
        long at = low ? o.along().lo() + OFF : o.along().hi() - OFF;
        if (level) {
          way(draft, o, at, floor + OVER_FLOOR, low, "floor");
        }
        if (!o.header() && o.first().ceilingZ() == o.second().ceilingZ()) {
          way(draft, o, at, o.headZ() - UNDER_CEILING, low, "ceiling");
        }
      }
    }
  }

  private static void way(Draft draft, OpenSide o, long at, long z, boolean low, String where) {
    Point3 a = o.inside(true, at, OFF).at(z);
    Point3 b = o.inside(false, at, OFF).at(z);
    if (!draft.solids.free(a, b, CABLE)) {
      return;
    }
    String end = o.side().runsEastWest() ? (low ? "west" : "east") : (low ? "south" : "north");
    String id =
        "open/"
            + o.first().name()
            + "-"
            + o.second().name()
            + "/"
            + o.side().word()
            + "-"
            + Tags.of(o.along().lo())
            + "/"
            + end
            + "-"
            + where;
    draft.keep(
        new Site(
            id,
            SiteKind.OPENING,
            a,
            b,
            RoomSpaces.surface(o.first().name()),
            RoomSpaces.surface(o.second().name()),
            List.of(),
            List.of(new Site.Layer("opening", a.distanceTo(b))),
            51,
            51,
            true,
            false));
  }
}
