package holloway.routing;

import holloway.geometry.Point2;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The closed line of wall that cable is clipped along, in plan, measured from its first corner. */
final class RingLine {
  /** Stretches whose distances differ by no more are as near: rounding of a turned house. */
  private static final long AS_NEAR = 1_000_000;

  /**
   * Where a place leads onto the line.
   *
   * @param param distance from the first corner
   * @param away how far the place lies from there, level
   */
  record Stop(Entry entry, long param, Point2 foot, long away) {
    private boolean isAt(Stop other) {
      return foot.at(0).distanceTo(other.foot.at(0)) <= AS_NEAR;
    }
  }

  private final List<Point2> corners;
  private final List<Long> starts = new ArrayList<>();
  private final long round;

  RingLine(List<Point2> corners) {
    this.corners = corners;
    long sum = 0;
    for (int i = 0; i < corners.size(); i++) {
      starts.add(sum);
      sum += length(i);
    }
    round = sum;
  }

  /** Its whole length, nanometres. */
  long round() {
    return round;
  }

  /** Where its corners lie, by distance from the first. */
  List<Long> starts() {
    return starts;
  }

  private Point2 end(int i) {
    return corners.get((i + 1) % corners.size());
  }

  private long length(int i) {
    return corners.get(i).at(0).distanceTo(end(i).at(0));
  }

  /**
   * Where a place leads to the line: at the nearest of its stretches, and at each other that is as
   * near. A hole in a corner hangs on both walls, whichever comes first round the room.
   */
  List<Stop> stops(Entry e) {
    List<Stop> feet = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      feet.add(foot(e, i));
    }
    feet.sort(Comparator.comparingLong(Stop::away));
    List<Stop> out = new ArrayList<>();
    for (Stop s : feet) {
      if (s.away() <= feet.get(0).away() + AS_NEAR && out.stream().noneMatch(o -> o.isAt(s))) {
        out.add(s);
      }
    }
    return out;
  }

  /** The point of one stretch that is nearest to a place. */
  private Stop foot(Entry e, int i) {
    Point2 a = corners.get(i);
    Point2 b = end(i);
    double len = Math.max(1, length(i));
    double along =
        (e.at().x() - a.x()) * (b.x() - a.x() + 0.0) + (e.at().y() - a.y()) * (b.y() - a.y() + 0.0);
    double t = Math.max(0, Math.min(1, along / (len * len)));
    Point2 p = between(a, b, t);
    return new Stop(e, starts.get(i) + Math.round(t * len), p, p.at(0).distanceTo(e.at().withZ(0)));
  }

  /** The point at a distance from the first corner, also round and on past it. */
  Point2 pointAt(long param) {
    long p = Math.floorMod(param, round);
    int i = starts.size() - 1;
    while (i > 0 && starts.get(i) > p) {
      i--;
    }
    return between(corners.get(i), end(i), (p - starts.get(i)) / (double) Math.max(1, length(i)));
  }

  private static Point2 between(Point2 a, Point2 b, double t) {
    return new Point2(
        a.x() + Math.round(t * (b.x() - a.x())), a.y() + Math.round(t * (b.y() - a.y())));
  }
}
