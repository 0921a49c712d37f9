package holloway.survey;

import holloway.geometry.Interval;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Joins stretches in one line into walls: one framed strip may show faces to several rooms. Those
 * that fit best are joined first, so that a stretch which could go on with either of two others
 * goes with the same one from whichever end the line is walked.
 */
final class StripMerger {
  private StripMerger() {}

  /** What fits best comes first; of those that fit alike, what lies nearest, then the longest. */
  private static final Comparator<Pair> FITS =
      Comparator.comparingLong(Pair::misfit)
          .thenComparingLong(Pair::apart)
          .thenComparingLong(p -> -p.length())
          .thenComparing(Pair::rooms);

  /**
   * Stretches that are one wall.
   *
   * @param parts by {@link Strip#ORDER}
   * @param whole all of them, with their studs in line with the longest one's, wherever it stands
   */
  private record Run(List<Strip> parts, Strip whole) {
    static Run of(List<Strip> parts) {
      List<Strip> sorted = parts.stream().sorted(Strip.ORDER).toList();
      Interval core = sorted.stream().min(Strip.LONGEST).orElseThrow().core();
      Strip whole = sorted.get(0);
      for (Strip s : sorted.subList(1, sorted.size())) {
        whole = join(whole, s, core);
      }
      return new Run(sorted, whole);
    }

    Run and(Run o) {
      List<Strip> all = new ArrayList<>(parts);
      all.addAll(o.parts);
      return of(all);
    }
  }

  /** Two runs that may be one; measures in whole tenths of a millimetre, which a mirror keeps. */
  private record Pair(Run one, Run other) {
    private static final double TENTH = 1e5;

    /** How far the studs of one are out of line with the other's. */
    long misfit() {
      Interval a = one.whole.core();
      Interval b = other.whole.core();
      return Math.round((Math.abs(a.lo() - b.lo()) + Math.abs(a.hi() - b.hi())) / TENTH);
    }

    long apart() {
      return Math.max(0, Math.round(gap(one.whole, other.whole) / TENTH));
    }

    String rooms() {
      return Stream.of(one.whole, other.whole)
          .map(Strip::rooms)
          .sorted()
          .collect(Collectors.joining("\t"));
    }

    long length() {
      return Math.round((one.whole.s().length() + other.whole.s().length()) / TENTH);
    }
  }

  static List<Strip> merge(List<Strip> strips) {
    List<Run> runs = new ArrayList<>();
    strips.stream().sorted(Strip.ORDER).forEach(s -> runs.add(Run.of(List.of(s))));
    for (Pair best = best(runs); best != null; best = best(runs)) {
      runs.remove(best.other);
      runs.set(runs.indexOf(best.one), best.one.and(best.other));
    }
    return runs.stream().map(Run::whole).toList();
  }

  /**
   * The two that fit best, of those that are alike in all the lowest; null if no two can be one.
   */
  private static Pair best(List<Run> runs) {
    Pair best = null;
    for (int i = 0; i < runs.size(); i++) {
      for (int j = i + 1; j < runs.size(); j++) {
        if (canJoin(runs.get(i).whole, runs.get(j).whole)) {
          Pair p = new Pair(runs.get(i), runs.get(j));
          best = best == null || FITS.compare(p, best) < 0 ? p : best;
        }
      }
    }
    return best;
  }

  private static boolean canJoin(Strip a, Strip b) {
    boolean space = a.kind() == Strip.Kind.SPACE || b.kind() == Strip.Kind.SPACE;
    return a.outside() == b.outside()
        && gap(a, b) <= bridged(b)
        && StripMakes.near(a.core(), b.core())
        && (space || StripMakes.near(a.t(), b.t()))
        && a.make().isLike(b.make());
  }

  /** From the end of one to the beginning of the other; below 0 if they lie beside each other. */
  private static long gap(Strip a, Strip b) {
    return Math.max(a.s().lo() - b.s().hi(), b.s().lo() - a.s().hi());
  }

  /** An outer wall goes on in front of a recess that nobody surveyed. */
  private static long bridged(Strip s) {
    return s.isOuter() ? Outdoors.WIDEST_RECESS : StripMakes.BRIDGED;
  }

  private static Strip join(Strip a, Strip b, Interval core) {
    Interval t = new Interval(Math.min(a.t().lo(), b.t().lo()), Math.max(a.t().hi(), b.t().hi()));
    Interval s = new Interval(Math.min(a.s().lo(), b.s().lo()), Math.max(a.s().hi(), b.s().hi()));
    List<Strip.Shown> shown = new ArrayList<>(a.shown());
    shown.addAll(b.shown());
    Strip.Kind kind = a.kind() == Strip.Kind.SPACE ? b.kind() : a.kind();
    return new Strip(a.heading(), kind, s, t, core, a.outside(), a.make().and(b.make()), shown);
  }
}
