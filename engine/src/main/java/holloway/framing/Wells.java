package holloway.framing;

import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Interval;
import holloway.geometry.Point3;
import holloway.geometry.Polygon2;
import holloway.survey.Placed;
import holloway.survey.PlacedStair;
import java.util.ArrayList;
import java.util.List;

/** Openings for stairs in the floor of a level and in the ceilings under it. */
final class Wells {
  private static final long SLIVER = 5_000_000;

  private Wells() {}

  /** World boxes of the wells in a level's floor. */
  static List<Box> inFloor(Placed placed, String level) {
    return placed.stairs().stream()
        .filter(s -> s.upper().name().equals(level))
        .map(PlacedStair::box)
        .toList();
  }

  /** World boxes of the wells in the ceilings of a level. */
  static List<Box> inCeiling(Placed placed, String level) {
    return placed.stairs().stream()
        .filter(s -> s.room().room().level().equals(level))
        .map(PlacedStair::box)
        .toList();
  }

  static List<Box> toLocal(List<Box> wells, Frame frame) {
    return wells.stream().map(b -> toLocal(b, frame)).toList();
  }

  private static Box toLocal(Box b, Frame frame) {
    Point3 p = frame.toLocal(new Point3(b.x0(), b.y0(), b.z0()));
    Point3 q = frame.toLocal(new Point3(b.x1(), b.y1(), b.z1()));
    return new Box(
        Math.min(p.x(), q.x()),
        Math.max(p.x(), q.x()),
        Math.min(p.y(), q.y()),
        Math.max(p.y(), q.y()),
        p.z(),
        q.z());
  }

  /** What is left of world rectangles round the wells, as rectangles. */
  static List<Polygon2> cut(List<Polygon2> rectangles, List<Box> wells) {
    List<Polygon2> left = rectangles;
    for (Box w : wells) {
      List<Polygon2> next = new ArrayList<>();
      left.forEach(r -> next.addAll(cut(r, w)));
      left = next;
    }
    return left;
  }

  private static List<Polygon2> cut(Polygon2 rectangle, Box w) {
    Interval x = rectangle.xRange();
    Interval y = rectangle.yRange();
    if (!x.overlaps(w.x()) || !y.overlaps(w.y())) {
      return List.of(rectangle);
    }
    Interval across = y.cut(w.y()).orElseThrow();
    List<Polygon2> out = new ArrayList<>();
    for (Interval i : y.without(List.of(w.y()), SLIVER)) {
      out.add(Polygon2.rectangle(x.lo(), i.lo(), x.hi(), i.hi()));
    }
    for (Interval i : x.without(List.of(w.x()), SLIVER)) {
      out.add(Polygon2.rectangle(i.lo(), across.lo(), i.hi(), across.hi()));
    }
    return out;
  }

  /**
   * Joists with a doubled trimmer along both sides of each well, as far as there is room before the
   * floor's edge; a joist of the layout that stands there gives way. Doubling is common practice;
   * IRC R502.10 asks it of headers over 4 ft.
   */
  static List<Interval> trimmed(List<Interval> joists, List<Box> wells, long thick) {
    Interval first = joists.get(0);
    Interval last = joists.get(joists.size() - 1);
    List<Interval> plies = new ArrayList<>();
    for (Box w : wells) {
      for (int k = 1; k <= 2; k++) {
        plies.add(new Interval(w.y0() - k * thick, w.y0() - (k - 1) * thick));
        plies.add(new Interval(w.y1() + (k - 1) * thick, w.y1() + k * thick));
      }
    }
    plies.removeIf(p -> p.lo() < first.hi() || p.hi() > last.lo());
    List<Interval> out = new ArrayList<>(joists);
    for (Interval p : plies) {
      out.removeIf(j -> j != first && j != last && j.overlaps(p));
      out.add(p);
    }
    out.sort((a, b) -> Long.compare(a.lo(), b.lo()));
    return out;
  }

  /** Stretches along a joist that wells with their doubled headers take. */
  static List<Interval> across(List<Box> wells, Interval joist, long thick) {
    return wells.stream()
        .filter(w -> w.y().overlaps(joist))
        .map(w -> new Interval(w.x0() - 2 * thick, w.x1() + 2 * thick))
        .toList();
  }

  /** The two plies of the header at each end of a well, as plan boxes of the floor's frame. */
  static List<Box> headers(Box well, Interval z, long thick) {
    List<Box> out = new ArrayList<>();
    for (int k = 1; k <= 2; k++) {
      long a = well.x0() - k * thick;
      long b = well.x1() + (k - 1) * thick;
      out.add(new Box(a, a + thick, well.y0(), well.y1(), z.lo(), z.hi()));
      out.add(new Box(b, b + thick, well.y0(), well.y1(), z.lo(), z.hi()));
    }
    return out;
  }
}
