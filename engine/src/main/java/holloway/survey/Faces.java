package holloway.survey;

import holloway.geometry.Point2;
import holloway.geometry.Polygon2;
import holloway.house.Side;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The visible segments of a room's outline by compass side. */
final class Faces {
  private Faces() {}

  /**
   * Edges whose outward normal looks most towards {@code side}, in order from west or south, each
   * turned to start at its west or south end.
   */
  static List<Placed.Segment> of(Polygon2 outline, Side side) {
    List<Placed.Segment> out = new ArrayList<>();
    List<Point2> c = outline.counterClockwise().corners();
    for (int i = 0; i < c.size(); i++) {
      Point2 a = c.get(i);
      Point2 b = c.get((i + 1) % c.size());
      if (sideOf(a, b) == side) {
        boolean forward = side.runsEastWest() ? a.x() <= b.x() : a.y() <= b.y();
        out.add(forward ? new Placed.Segment(a, b) : new Placed.Segment(b, a));
      }
    }
    Comparator<Placed.Segment> order =
        side.runsEastWest()
            ? Comparator.comparingLong((Placed.Segment s) -> s.start().x())
                .thenComparingLong(s -> s.start().y())
            : Comparator.comparingLong((Placed.Segment s) -> s.start().y())
                .thenComparingLong(s -> s.start().x());
    out.sort(order);
    return out;
  }

  /**
   * The compass side that the edge a→b of a counter-clockwise outline looks to; exact diagonals
   * count as north or south.
   */
  static Side sideOf(Point2 a, Point2 b) {
    long dx = b.x() - a.x();
    long dy = b.y() - a.y();
    if (Math.abs(dx) >= Math.abs(dy)) {
      return dx > 0 ? Side.SOUTH : Side.NORTH;
    }
    return dy > 0 ? Side.EAST : Side.WEST;
  }
}
