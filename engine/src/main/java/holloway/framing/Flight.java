package holloway.framing;

import holloway.geometry.Box;
import holloway.geometry.Interval;
import holloway.geometry.Point2;
import holloway.house.Stair;
import holloway.survey.PlacedStair;
import java.util.ArrayList;
import java.util.List;

/**
 * The shape of a straight flight in the frame of its stair: solid in the depth of its stringers
 * (2x10, usual make, from memory) under the line of its nosings, and the space below.
 */
public record Flight(PlacedStair placed) {
  static final long STRINGER = 38_000_000;
  static final long DEPTH = 235_000_000;
  static final long PANEL = 13_000_000;
  private static final long BESIDE = 60_000_000;

  double slope() {
    return placed.rise() / (double) placed.length();
  }

  double cos() {
    return 1 / Math.sqrt(1 + slope() * slope());
  }

  /** Distance from its lower edge at which the underside leaves the floor. */
  long foot() {
    return Math.min(placed.length() - 1, Math.round(DEPTH / cos() / slope()));
  }

  /** Height of the underside over the floor at a distance from the lower edge. */
  public long underside(long along) {
    return Math.max(0, Math.round(slope() * along - DEPTH / cos()));
  }

  /** A stretch by distances from the lower edge, in the frame of the stair. */
  Interval along(long from, long to) {
    return placed.onward()
        ? new Interval(from, to)
        : new Interval(placed.length() - to, placed.length() - from);
  }

  /**
   * The part of the space below that a box can be laid into: the upper half of its length, as high
   * as the space is where that half begins. Panels that close it stand outside the box.
   */
  public Box space() {
    long from = foot() + (placed.length() - foot()) / 2;
    long end = placed.length() - (panelAtEnd() ? PANEL : 0);
    Interval u = along(from, end);
    long v0 = panelAt(0) ? PANEL : 0;
    long v1 = placed.width() - (panelAt(1) ? PANEL : 0);
    return new Box(u.lo(), u.hi(), v0, v1, 0, Math.max(1, underside(from)));
  }

  private boolean closed() {
    return placed.stair().under() != Stair.Under.OPEN;
  }

  /** Is there a panel on this side (0 or 1 across the stair), where no wall stands beside it? */
  public boolean panelAt(int side) {
    Interval u = along(foot(), placed.length());
    return open(u.mid(), side == 0 ? -BESIDE : placed.width() + BESIDE);
  }

  /** The same of the side below the upper end. */
  public boolean panelAtEnd() {
    long u = placed.onward() ? placed.length() + BESIDE : -BESIDE;
    return open(u, placed.width() / 2);
  }

  private boolean open(long u, long v) {
    Point2 p = placed.frame().toWorld(u, v, 0).plan();
    return closed() && placed.room().outline().contains(p);
  }

  /** Panels that close the space, in steps under the slope, in the frame of the stair. */
  List<Box> panels() {
    List<Box> out = new ArrayList<>();
    long step = 250_000_000;
    for (int side = 0; side < 2; side++) {
      long v = side == 0 ? 0 : placed.width() - PANEL;
      for (long x = foot(); panelAt(side) && x < placed.length(); x += step) {
        Interval u = along(x, Math.min(placed.length(), x + step));
        long h = underside(x);
        if (h > 0) {
          out.add(new Box(u.lo(), u.hi(), v, v + PANEL, 0, h));
        }
      }
    }
    if (panelAtEnd()) {
      Interval u = along(placed.length() - PANEL, placed.length());
      out.add(new Box(u.lo(), u.hi(), 0, placed.width(), 0, underside(placed.length() - PANEL)));
    }
    return out;
  }
}
