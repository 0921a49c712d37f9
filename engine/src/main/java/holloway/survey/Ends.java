package holloway.survey;

import holloway.geometry.Interval;
import holloway.geometry.Overlay;
import holloway.geometry.Point3;
import holloway.house.Direction;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/**
 * Which wall runs through where walls meet. Every strip first reaches as far as it ever may: to the
 * near face of a wall that passes its end (a T), to the far face of one that ends there too (a
 * corner). Then strips take their room in order of rank, outer walls first, then inner ones, longer
 * before shorter, those that carry joists before others; what a strip of higher rank has taken is
 * cut out of those after it. So no two framings ever share space.
 *
 * <p>The order does not know the compass, so that a house may be turned or seen in a mirror. Common
 * practice, no published source, is that long walls run through, and of equal ones those that carry
 * the joists. Only walls that are alike in all of this, as of a square room under nothing, are told
 * apart by where they lie.
 */
final class Ends {
  /** Faces this near count as touching. */
  private static final long TOUCH = 30 * Length.NM_PER_MM;

  /** Past the studs of an outer wall by this much is past the wall: beyond is only cladding. */
  private static final long JUST = 5 * Length.NM_PER_MM;

  /** A piece that shows less than this is dropped. */
  private static final long LEAST = 60 * Length.NM_PER_MM;

  private Ends() {}

  /** A millimetre, so that what is rounded differently in a turned house is as long. */
  private static final long AS_LONG = Length.NM_PER_MM;

  /** No length that is stated in sixty-fourths of an inch or tenths of a millimetre lies here. */
  private static final long BETWEEN_LENGTHS = 271_828;

  /**
   * @param carried which way the joists or rafters run that these walls carry
   */
  static List<Framed> of(List<Strip> strips, Optional<Direction> carried) {
    List<Strip> ranked = strips.stream().sorted(rank(carried)).toList();
    List<Framed> placed = new ArrayList<>();
    for (Strip w : ranked) {
      List<Interval> taken = new ArrayList<>();
      Interval most = reach(w, strips);
      for (Framed p : placed) {
        taken(w, most, p).ifPresent(taken::add);
      }
      for (Interval piece : most.without(taken, LEAST)) {
        if (piece.cut(w.s()).filter(v -> v.length() >= LEAST).isPresent()) {
          placed.add(new Framed(w, piece));
        }
      }
    }
    return placed;
  }

  private static Comparator<Strip> rank(Optional<Direction> carried) {
    return Comparator.comparingInt(Ends::order)
        .thenComparingLong(s -> -Math.floorDiv(s.s().length() + BETWEEN_LENGTHS, AS_LONG))
        .thenComparing(s -> !carries(s, carried))
        .thenComparing(s -> s.sides().stream().sorted().collect(Collectors.joining("-")))
        .thenComparing(Strip.ORDER);
  }

  private static int order(Strip s) {
    return (s.isOuter() ? 0 : 1) + (s.heading().isSquare() ? 0 : 2);
  }

  private static boolean carries(Strip s, Optional<Direction> carried) {
    Direction across = s.heading().isEastWest() ? Direction.NORTH_SOUTH : Direction.EAST_WEST;
    return carried.filter(d -> d == across).isPresent();
  }

  /** How far the framing of w may go at most. */
  private static Interval reach(Strip w, List<Strip> all) {
    List<Long> lowPassed = new ArrayList<>();
    List<Long> lowCorner = new ArrayList<>();
    List<Long> highPassed = new ArrayList<>();
    List<Long> highCorner = new ArrayList<>();
    for (Strip x : all) {
      if (!w.isSquareTo(x) || !meets(w, x)) {
        continue;
      }
      Interval whole = w.acrossOf(x, x.t());
      Interval core = w.acrossOf(x, x.core());
      boolean passes = passes(w, x, all);
      if (touches(whole, w.s().lo())) {
        (passes ? lowPassed : lowCorner).add(passes ? core.hi() : core.lo());
      } else if (touches(whole, w.s().hi())) {
        (passes ? highPassed : highCorner).add(passes ? core.lo() : core.hi());
      }
    }
    if (goesOnAt(w, w.s().lo(), all)) {
      lowPassed = List.of(w.s().lo());
    }
    if (goesOnAt(w, w.s().hi(), all)) {
      highPassed = List.of(w.s().hi());
    }
    LongStream lows = stream(lowPassed.isEmpty() ? lowCorner : lowPassed);
    long lo = (lowPassed.isEmpty() ? lows.min() : lows.max()).orElse(w.s().lo());
    LongStream highs = stream(highPassed.isEmpty() ? highCorner : highPassed);
    long hi = (highPassed.isEmpty() ? highs.max() : highs.min()).orElse(w.s().hi());
    return new Interval(lo, Math.max(lo, hi));
  }

  private static LongStream stream(List<Long> list) {
    return list.stream().mapToLong(Long::longValue);
  }

  private static boolean touches(Interval whole, long end) {
    return whole.lo() - TOUCH <= end && end <= whole.hi() + TOUCH;
  }

  /** Does x reach w's line at all? */
  private static boolean meets(Strip w, Strip x) {
    Interval along = w.alongOf(x, x.s());
    return along.lo() - TOUCH <= w.t().hi() && w.t().lo() <= along.hi() + TOUCH;
  }

  /**
   * Does x, or the line that it carries on behind one room's face, go past both sides of w? An
   * inner and an outer wall behind one long face are framed in one line, and what meets them butts.
   */
  private static boolean passes(Strip w, Strip x, List<Strip> all) {
    long lo = x.s().lo();
    long hi = x.s().hi();
    for (Strip y : all) {
      if (x != y && goesOn(x, y)) {
        lo = Math.min(lo, y.s().lo());
        hi = Math.max(hi, y.s().hi());
      }
    }
    Interval along = w.alongOf(x, new Interval(lo, hi));
    long low = w.outside() == 0 ? w.core().lo() - JUST : w.t().lo() - TOUCH;
    long high = w.outside() == 1 ? w.core().hi() + JUST : w.t().hi() + TOUCH;
    return along.lo() < low && along.hi() > high;
  }

  /** Two stretches end to end behind one face. */
  private static boolean goesOn(Strip x, Strip y) {
    boolean touch = x.s().hi() == y.s().lo() || y.s().hi() == x.s().lo();
    return x.heading() == y.heading()
        && touch
        && x.core().overlaps(y.core())
        && x.shown().stream().anyMatch(f -> y.shown().stream().anyMatch(g -> g.edge() == f.edge()));
  }

  private static boolean goesOnAt(Strip w, long end, List<Strip> all) {
    return all.stream()
        .anyMatch(y -> y != w && goesOn(w, y) && (y.s().lo() == end || y.s().hi() == end));
  }

  /** The stretch of w that framing p has taken already. */
  private static Optional<Interval> taken(Strip w, Interval most, Framed p) {
    Strip x = p.strip();
    if (w.isSquareTo(x)) {
      Interval across = w.acrossOf(x, x.core());
      return w.alongOf(x, p.range()).overlaps(w.core()) && across.overlaps(most)
          ? Optional.of(across)
          : Optional.empty();
    }
    if (w.heading() == x.heading()) {
      return x.core().overlaps(w.core()) && p.range().overlaps(most)
          ? Optional.of(p.range())
          : Optional.empty();
    }
    return askew(w, most, p);
  }

  private static Optional<Interval> askew(Strip w, Interval most, Framed p) {
    Geometry shared =
        Overlay.shared(Framed.plan(w.heading().frame(), most, w.core()), p.corePlan());
    if (shared.getArea() < 1) {
      return Optional.empty();
    }
    long lo = Long.MAX_VALUE;
    long hi = Long.MIN_VALUE;
    for (Coordinate c : shared.getCoordinates()) {
      long s =
          w.heading()
              .frame()
              .toLocal(new Point3(Math.round(c.x * 1000) * 1000, Math.round(c.y * 1000) * 1000, 0))
              .x();
      lo = Math.min(lo, s);
      hi = Math.max(hi, s);
    }
    return Optional.of(new Interval(lo, hi));
  }
}
