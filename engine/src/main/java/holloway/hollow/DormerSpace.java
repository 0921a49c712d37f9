package holloway.hollow;

import holloway.framing.Attic;
import holloway.framing.PlacedDormer;
import holloway.geometry.Box;
import holloway.house.Side;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;

/** Where a body fits in an attic because a dormer stands over it. */
final class DormerSpace {
  /**
   * A dormer that is just as high as a body needs ends where the slope becomes as high: rounding
   * must not part the two.
   */
  private static final double MEETS_MM = 1;

  private DormerSpace() {}

  /** From front to slope and from cheek to cheek, of those that are high and wide enough. */
  static List<Geometry> bodies(Attic a, double bodyMm) {
    List<Geometry> out = new ArrayList<>();
    for (PlacedDormer d : a.dormers()) {
      Box b = d.clear();
      long wide = (d.dormer().side().runsEastWest() ? b.x() : b.y()).length();
      if (b.z().length() / 1e6 >= bodyMm && wide / 1e6 >= AtticSpace.HATCH_LEAST_MM) {
        out.add(toSlope(b, d.dormer().side()));
      }
    }
    return out;
  }

  /** From the dormer's front to where it meets the slope, on the other side, and a little on. */
  private static Geometry toSlope(Box b, Side front) {
    return Spaces.rectangle(
        b.x0() / 1e6 - (front == Side.EAST ? MEETS_MM : 0),
        b.y0() / 1e6 - (front == Side.NORTH ? MEETS_MM : 0),
        b.x1() / 1e6 + (front == Side.WEST ? MEETS_MM : 0),
        b.y1() / 1e6 + (front == Side.SOUTH ? MEETS_MM : 0));
  }
}
