package holloway.housefile;

import holloway.geometry.Point2;
import holloway.geometry.Turn;
import holloway.house.Fact;
import holloway.house.Room;
import holloway.house.Room.Placing;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Corners and places measured on a site's grid, turned back into the house's own frame. */
final class SiteOutlines {
  /** Whole millimetres and 64ths of an inch are both multiples of it, nanometres. */
  private static final long GRID = 125;

  /** Corners rounded to the millimetre put a wall that far off its line at most. */
  private static final double ROUNDED = 1.5e6;

  private static final double SLANT = Math.tan(Math.toRadians(0.05));

  /** A short stretch is as good as square only if it is much longer than it is off. */
  private static final double SHORT = 0.02;

  private SiteOutlines() {}

  static List<Point2> corners(Room r) {
    return r.outline().stream()
        .map(c -> new Point2(c.x().value().nm(), c.y().value().nm()))
        .toList();
  }

  /** The room that the survey starts from. */
  static Optional<Room> first(List<Room> rooms) {
    return rooms.stream().filter(r -> r.placing() instanceof Placing.Free).findFirst();
  }

  static List<Room> back(List<Room> rooms, Turn turn) {
    Optional<Room> first = first(rooms).filter(r -> !r.outline().isEmpty());
    return rooms.stream()
        .map(
            r ->
                r.outline().isEmpty()
                    ? r
                    : r.with(outline(r, turn), placing(r, first.orElse(r), turn)))
        .toList();
  }

  private static List<Room.Corner> outline(Room r, Turn turn) {
    List<Point2> own = square(corners(r), turn);
    List<Room.Corner> out = new ArrayList<>();
    for (int i = 0; i < own.size(); i++) {
      Room.Corner c = r.outline().get(i);
      out.add(new Room.Corner(fact(own.get(i).x(), c.x(), c), fact(own.get(i).y(), c.y(), c)));
    }
    return out;
  }

  /** A corner is as sure one way as the other once it is turned. */
  private static Fact<Length> fact(long nm, Fact<Length> said, Room.Corner c) {
    Length spread = c.x().spread().compareTo(c.y().spread()) > 0 ? c.x().spread() : c.y().spread();
    return new Fact<>(new Length(nm), spread, said.origin(), said.where());
  }

  /**
   * Turned back about the first corner; walls that then lie along an axis but for rounding are
   * brought in line.
   */
  private static List<Point2> square(List<Point2> corners, Turn turn) {
    Point2 first = corners.get(0);
    List<Point2> c = corners.stream().map(p -> turn.back(p.plus(-first.x(), -first.y()))).toList();
    int n = c.size();
    boolean[] sameX = new boolean[n];
    boolean[] sameY = new boolean[n];
    for (int i = 0; i < n; i++) {
      double dx = Math.abs(c.get((i + 1) % n).x() - c.get(i).x());
      double dy = Math.abs(c.get((i + 1) % n).y() - c.get(i).y());
      sameX[i] = dx <= slack(dy);
      sameY[i] = dy <= slack(dx);
    }
    long[] x = inLine(c.stream().mapToLong(Point2::x).toArray(), sameX);
    long[] y = inLine(c.stream().mapToLong(Point2::y).toArray(), sameY);
    List<Point2> out = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      out.add(new Point2(x[i], y[i]));
    }
    return out;
  }

  private static double slack(double length) {
    return Math.min(SHORT * length, Math.max(ROUNDED, SLANT * length));
  }

  /** Each run of neighbours that are the same gets its mean; all are rounded to the grid. */
  private static long[] inLine(long[] at, boolean[] same) {
    int n = at.length;
    int start = 0;
    while (start < n && same[Math.floorMod(start - 1, n)]) {
      start++;
    }
    long[] out = new long[n];
    for (int i = 0; i < n; ) {
      int to = i;
      double sum = at[(start + i) % n];
      while (to + 1 < n && same[(start + to) % n]) {
        to++;
        sum += at[(start + to) % n];
      }
      long mean = Math.round(sum / (to - i + 1) / GRID) * GRID;
      for (; i <= to; i++) {
        out[(start + i) % n] = mean;
      }
    }
    return out;
  }

  /** Where the own box's south-west corner lies from that of the first room. */
  private static Placing placing(Room r, Room first, Turn turn) {
    if (!(r.placing() instanceof Placing.At at)) {
      return r.placing();
    }
    Point2 there = southWest(corners(first));
    Point2 here = southWest(corners(r));
    Point2 from = corners(first).get(0);
    Point2 to = corners(r).get(0);
    Point2 apart =
        new Point2(at.x().value().nm(), at.y().value().nm())
            .plus(to.x() - here.x(), to.y() - here.y())
            .plus(there.x() - from.x(), there.y() - from.y());
    Point2 ownHere = southWest(square(corners(r), turn));
    Point2 ownThere = southWest(square(corners(first), turn));
    Point2 own = turn.back(apart).plus(ownHere.x() - ownThere.x(), ownHere.y() - ownThere.y());
    Room.Corner said = new Room.Corner(at.x(), at.y());
    return new Placing.At(
        fact(onGrid(own.x()), at.x(), said), fact(onGrid(own.y()), at.y(), said), at.where());
  }

  private static long onGrid(long nm) {
    return Math.round((double) nm / GRID) * GRID;
  }

  private static Point2 southWest(List<Point2> c) {
    return new Point2(
        c.stream().mapToLong(Point2::x).min().orElse(0),
        c.stream().mapToLong(Point2::y).min().orElse(0));
  }
}
