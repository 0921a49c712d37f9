package holloway.hollow;

import holloway.framing.Attic;
import holloway.framing.PlacedDormer;
import holloway.geometry.Box;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;

/** Where a body fits in an attic because a dormer stands over it. */
final class DormerSpace {
  private DormerSpace() {}

  /** From front to slope and from cheek to cheek, of those that are high and wide enough. */
  static List<Geometry> bodies(Attic a, double bodyMm) {
    List<Geometry> out = new ArrayList<>();
    for (PlacedDormer d : a.dormers()) {
      Box b = d.clear();
      long wide = (d.dormer().side().runsEastWest() ? b.x() : b.y()).length();
      if (b.z().length() / 1e6 >= bodyMm && wide / 1e6 >= AtticSpace.HATCH_LEAST_MM) {
        out.add(Spaces.rectangle(b.x0() / 1e6, b.y0() / 1e6, b.x1() / 1e6, b.y1() / 1e6));
      }
    }
    return out;
  }
}
