package holloway.housefile;

import holloway.geometry.Point2;
import holloway.geometry.Polygon2;
import holloway.house.Room;
import java.util.HashSet;
import java.util.List;

/** Whether a stated outline is the outline of a room at all. */
final class OutlineCheck {
  /** A quarter of a square metre: less is no room. */
  private static final double LEAST_MM2 = 250_000;

  private OutlineCheck() {}

  static void check(Entry e, List<Room.Corner> corners) {
    List<Point2> points =
        corners.stream().map(c -> new Point2(c.x().value().nm(), c.y().value().nm())).toList();
    if (new HashSet<>(points).size() < points.size()) {
      e.problem(
          "outline",
          "each corner once; the last joins the first by itself",
          "",
          "the outline names a corner twice");
    } else if (points.size() >= 3) {
      Polygon2 polygon = new Polygon2(points);
      if (!polygon.toJts().isSimple() || !polygon.toJts().isValid()) {
        e.problem("outline", "corners in order round the room", "", "the outline crosses itself");
      } else if (Math.abs(polygon.signedAreaMm2()) < LEAST_MM2) {
        e.problem("outline", "corners in order round the room", "", "the outline holds no room");
      }
    }
  }
}
