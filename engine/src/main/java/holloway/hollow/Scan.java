package holloway.hollow;

import holloway.geometry.Frame;
import holloway.geometry.Interval;
import holloway.geometry.Point2;
import holloway.geometry.Polygon2;
import java.util.ArrayList;
import java.util.List;

/** Stretches of a local u axis that lie inside an outline for a whole band of v. */
final class Scan {
  /** What runs on the very edge of an outline is not within it, whichever edge it is; nm. */
  private static final long BESIDE = 2000;

  private Scan() {}

  static Polygon2 toLocal(Polygon2 outline, Frame frame) {
    return new Polygon2(
        outline.corners().stream()
            .map(c -> frame.toLocal(c.at(frame.origin().z())).plan())
            .toList());
  }

  /** Stretches of x inside the local outline for every y of the band. */
  static List<Interval> inside(Polygon2 local, Interval y) {
    List<Long> cuts = new ArrayList<>(List.of(y.lo() + 1000, y.mid(), y.hi() - 1000));
    for (Point2 c : local.corners()) {
      if (y.lo() < c.y() && c.y() < y.hi()) {
        cuts.add(c.y() - 1000);
        cuts.add(c.y() + 1000);
      }
    }
    List<Interval> out = List.of(new Interval(Long.MIN_VALUE / 4, Long.MAX_VALUE / 4));
    for (long at : cuts) {
      out = common(out, line(local, at));
    }
    return out;
  }

  /** Stretches of x inside the local outline along a line and just beside it on both sides. */
  static List<Interval> along(Polygon2 local, long y) {
    return inside(local, new Interval(y - BESIDE, y + BESIDE));
  }

  private static List<Interval> line(Polygon2 local, long y) {
    List<Long> hits = new ArrayList<>();
    List<Point2> c = local.corners();
    for (int i = 0; i < c.size(); i++) {
      Point2 a = c.get(i);
      Point2 b = c.get((i + 1) % c.size());
      if ((a.y() > y) != (b.y() > y)) {
        hits.add(a.x() + Math.round((y - a.y()) / (double) (b.y() - a.y()) * (b.x() - a.x())));
      }
    }
    hits.sort(null);
    List<Interval> out = new ArrayList<>();
    for (int i = 0; i + 1 < hits.size(); i += 2) {
      out.add(new Interval(hits.get(i), hits.get(i + 1)));
    }
    return out;
  }

  static List<Interval> common(List<Interval> a, List<Interval> b) {
    List<Interval> out = new ArrayList<>();
    for (Interval i : a) {
      for (Interval j : b) {
        if (i.overlaps(j)) {
          out.add(i.cut(j).orElseThrow());
        }
      }
    }
    return out;
  }
}
