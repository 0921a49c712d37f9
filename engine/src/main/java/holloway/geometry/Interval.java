package holloway.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** A closed stretch {@code lo..hi} of a line in nanometres, lo at most hi. */
public record Interval(long lo, long hi) {
  public Interval {
    if (hi < lo) {
      throw new IllegalArgumentException("interval turned round: " + lo + ".." + hi);
    }
  }

  public long length() {
    return hi - lo;
  }

  public long mid() {
    return lo + (hi - lo) / 2;
  }

  public boolean contains(long p) {
    return lo <= p && p <= hi;
  }

  /** True when the two share more than a point. */
  public boolean overlaps(Interval o) {
    return lo < o.hi && o.lo < hi;
  }

  public Optional<Interval> cut(Interval o) {
    long a = Math.max(lo, o.lo);
    long b = Math.min(hi, o.hi);
    return a <= b ? Optional.of(new Interval(a, b)) : Optional.empty();
  }

  public long clamp(long p) {
    return Math.max(lo, Math.min(hi, p));
  }

  /**
   * What is left of this stretch when the holes are taken out, in order, pieces shorter than {@code
   * least} dropped.
   */
  public List<Interval> without(List<Interval> holes, long least) {
    List<Interval> sorted = new ArrayList<>(holes);
    sorted.sort(Comparator.comparingLong(Interval::lo).thenComparingLong(Interval::hi));
    List<Interval> left = new ArrayList<>();
    long from = lo;
    for (Interval h : sorted) {
      if (h.lo > from && Math.min(h.lo, hi) - from >= least) {
        left.add(new Interval(from, Math.min(h.lo, hi)));
      }
      from = Math.max(from, h.hi);
    }
    if (hi > from && hi - from >= least) {
      left.add(new Interval(from, hi));
    }
    return left;
  }
}
