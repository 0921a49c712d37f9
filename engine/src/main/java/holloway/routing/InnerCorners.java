package holloway.routing;

import holloway.geometry.Point2;
import holloway.geometry.Polygon2;
import java.util.ArrayList;
import java.util.List;

/** The corners of an outline that a shortest way round bends at: those that stand into it. */
final class InnerCorners {
  private InnerCorners() {}

  static List<Point2> of(Polygon2 outline) {
    List<Point2> c = outline.corners();
    double turning = Math.signum(outline.signedAreaMm2());
    List<Point2> out = new ArrayList<>();
    for (int i = 0; i < c.size(); i++) {
      Point2 a = c.get(i);
      Point2 b = c.get((i + 1) % c.size());
      Point2 d = c.get((i + 2) % c.size());
      double cross =
          (b.x() - a.x()) / 1e6 * ((d.y() - b.y()) / 1e6)
              - (b.y() - a.y()) / 1e6 * ((d.x() - b.x()) / 1e6);
      if (cross * turning < 0) {
        out.add(b);
      }
    }
    return out;
  }
}
