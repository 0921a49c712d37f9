package holloway.importing;

import holloway.geometry.Point2;
import holloway.geometry.Polygon2;
import holloway.house.Side;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;

/**
 * A room in the squared plan of the house; outline in nanometres, heights in millimetres.
 *
 * @param level from 0 for the lowest
 */
record PlanRoom(
    String name, int level, Polygon2 outline, double floor, double ceiling, Set<String> notes) {

  /** All faces of one side from west or south, as a house file counts them. */
  List<Face> faces(Side side) {
    List<Face> out = new ArrayList<>();
    List<Point2> c = outline.corners();
    List<Point2[]> ends = new ArrayList<>();
    for (int i = 0; i < c.size(); i++) {
      Point2 a = c.get(i);
      Point2 b = c.get((i + 1) % c.size());
      if (sideOf(a, b) == side) {
        boolean forward = side.runsEastWest() ? a.x() <= b.x() : a.y() <= b.y();
        ends.add(forward ? new Point2[] {a, b} : new Point2[] {b, a});
      }
    }
    ends.sort(
        side.runsEastWest()
            ? Comparator.comparing((Point2[] e) -> e[0])
            : Comparator.comparingLong((Point2[] e) -> e[0].y()).thenComparingLong(e -> e[0].x()));
    for (Point2[] e : ends) {
      out.add(new Face(this, side, out.size() + 1, e[0], e[1]));
    }
    return out;
  }

  List<Face> faces() {
    List<Face> out = new ArrayList<>();
    for (Side side : Side.values()) {
      out.addAll(faces(side));
    }
    return out;
  }

  /** Which way an edge of a counter-clockwise outline looks; diagonals count as north or south. */
  private static Side sideOf(Point2 a, Point2 b) {
    long dx = b.x() - a.x();
    long dy = b.y() - a.y();
    if (Math.abs(dx) >= Math.abs(dy)) {
      return dx > 0 ? Side.SOUTH : Side.NORTH;
    }
    return dy > 0 ? Side.EAST : Side.WEST;
  }

  Point2 southWest() {
    return new Point2(outline.xRange().lo(), outline.yRange().lo());
  }

  double areaMm2() {
    return outline.signedAreaMm2();
  }
}
