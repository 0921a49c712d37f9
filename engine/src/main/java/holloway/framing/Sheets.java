package holloway.framing;

import holloway.geometry.Box;
import holloway.geometry.Interval;
import holloway.geometry.Point2;
import holloway.geometry.Polygon2;
import holloway.survey.Wall;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Cuts sheets into boxes: a wall face round its openings, a floor or ceiling outline into
 * rectangles.
 */
final class Sheets {
  private static final long SLIVER = 5_000_000;

  /** As near to an angled edge as sheets in steps come: less than half of any stud's depth. */
  private static final long STEP = 20_000_000;

  /** Steps are wider than what names tell apart. */
  private static final long WIDE = 10_000_001;

  private Sheets() {}

  /**
   * Boxes of a wall sheet with its openings left out: full-height strips between openings, then the
   * parts above and below each.
   */
  static List<Box> around(
      Interval s, Interval t, Interval z, Collection<Wall.WallOpening> openings) {
    List<Box> out = new ArrayList<>();
    List<Interval> holes = openings.stream().map(Wall.WallOpening::s).toList();
    for (Interval strip : s.without(holes, SLIVER)) {
      out.add(new Box(strip.lo(), strip.hi(), t.lo(), t.hi(), z.lo(), z.hi()));
    }
    for (Wall.WallOpening o : openings) {
      if (!o.s().overlaps(s)) {
        continue;
      }
      Interval across = o.s().cut(s).orElseThrow();
      for (Interval part : z.without(List.of(o.z()), SLIVER)) {
        out.add(new Box(across.lo(), across.hi(), t.lo(), t.hi(), part.lo(), part.hi()));
      }
    }
    return out;
  }

  /**
   * An outline as world rectangles: slabs between successive y of its corners, each with the x
   * stretches that lie inside for the whole slab. Exact for outlines with square corners; along an
   * angled edge slabs are halved until the steps lie within {@link #STEP} of it, never past it.
   */
  static List<Polygon2> rectangles(Polygon2 outline) {
    TreeSet<Long> ys = new TreeSet<>();
    outline.corners().forEach(c -> ys.add(c.y()));
    List<Polygon2> out = new ArrayList<>();
    Long from = null;
    for (long y : ys) {
      if (from != null && y - from >= SLIVER) {
        List<Interval> whole =
            insideAlong(outline, from, y).stream().filter(x -> x.length() >= SLIVER).toList();
        for (Interval x : whole) {
          out.add(Polygon2.rectangle(x.lo(), from, x.hi(), y));
        }
        halve(outline, new Interval(from, y), whole, out);
      }
      from = y;
    }
    return out;
  }

  /** Adds what lies inside each half of a slab beside what lies inside all of it. */
  private static void halve(
      Polygon2 outline, Interval y, List<Interval> taken, List<Polygon2> out) {
    boolean slants =
        Stream.of(y.lo() + 1000, y.hi() - 1000)
            .flatMap(at -> Scan.line(outline, at).stream())
            .anyMatch(x -> !x.without(taken, STEP).isEmpty());
    if (y.length() <= STEP || !slants) {
      return;
    }
    for (Interval half : List.of(new Interval(y.lo(), y.mid()), new Interval(y.mid(), y.hi()))) {
      List<Interval> all = new ArrayList<>(taken);
      for (Interval inside : insideAlong(outline, half.lo(), half.hi())) {
        for (Interval x : inside.without(taken, WIDE)) {
          out.add(Polygon2.rectangle(x.lo(), half.lo(), x.hi(), half.hi()));
          all.add(x);
        }
      }
      halve(outline, half, all, out);
    }
  }

  /** Stretches of x that lie inside the outline for every y between the two. */
  static List<Interval> insideAlong(Polygon2 outline, long y0, long y1) {
    return Scan.insideAlongX(outline, y0, y1);
  }

  /** Scan lines across an outline. */
  static final class Scan {
    private Scan() {}

    static List<Interval> insideAlongX(Polygon2 outline, long y0, long y1) {
      List<Interval> at0 = line(outline, y0 + 1000);
      List<Interval> at1 = line(outline, y1 - 1000);
      List<Interval> mid = line(outline, y0 + (y1 - y0) / 2);
      return common(common(at0, at1), mid);
    }

    private static List<Interval> line(Polygon2 outline, long y) {
      List<Long> hits = new ArrayList<>();
      List<Point2> c = outline.corners();
      for (int i = 0; i < c.size(); i++) {
        Point2 a = c.get(i);
        Point2 b = c.get((i + 1) % c.size());
        if ((a.y() > y) != (b.y() > y)) {
          double f = (y - a.y()) / (double) (b.y() - a.y());
          hits.add(Math.round(a.x() + f * (b.x() - a.x())));
        }
      }
      hits.sort(null);
      List<Interval> out = new ArrayList<>();
      for (int i = 0; i + 1 < hits.size(); i += 2) {
        out.add(new Interval(hits.get(i), hits.get(i + 1)));
      }
      return out;
    }

    private static List<Interval> common(List<Interval> a, List<Interval> b) {
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
}
