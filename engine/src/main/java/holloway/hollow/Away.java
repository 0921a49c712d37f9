package holloway.hollow;

import holloway.geometry.Frame;
import holloway.geometry.Point2;
import holloway.house.LayoutCorner;
import java.util.Comparator;
import java.util.function.ToLongFunction;

/**
 * The way from the corner that layouts begin at. Of places that are as good, and of places tried
 * one after the other, the first one this way is taken: a house in a mirror, whose layouts begin at
 * the mirrored corner, gets the mirrored places.
 */
public record Away(LayoutCorner from) {
  static Away of(Draft draft) {
    return new Away(draft.framed.placed().house().layout());
  }

  private int east() {
    return from.isFromHigh(true) ? -1 : 1;
  }

  private int north() {
    return from.isFromHigh(false) ? -1 : 1;
  }

  /** 1 where u leads away from that corner, -1 where it leads towards it. */
  public int alongU(Frame f) {
    return sign(f.u());
  }

  /** The same of v. */
  int alongV(Frame f) {
    return sign(f.v());
  }

  private int sign(Frame.Axis a) {
    return east() * a.x() + north() * a.y() >= 0 ? 1 : -1;
  }

  /** How far along a stretch from its end on that side, nanometres. */
  static long at(long lo, long hi, int sign, long off) {
    return sign > 0 ? lo + off : hi - off;
  }

  /** A plan point so far from another, each amount counted away from that corner. */
  public Point2 plus(Point2 p, long eastWest, long northSouth) {
    return p.plus(east() * eastWest, north() * northSouth);
  }

  /** Nearest to that corner first. */
  public Comparator<Point2> order() {
    return Comparator.comparingLong(this::far).thenComparingLong(p -> east() * p.x());
  }

  /** The same; of those as near, by what a mirror along the diagonal keeps too. */
  Comparator<Point2> order(ToLongFunction<Point2> kept) {
    return Comparator.comparingLong(this::far).thenComparingLong(kept).thenComparing(order());
  }

  private long far(Point2 p) {
    return east() * p.x() + north() * p.y();
  }
}
