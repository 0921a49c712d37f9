package holloway.survey;

import holloway.geometry.Interval;
import holloway.units.Length;
import java.util.Optional;

/** Where the gap of a cavity wall lies between its leaves. */
public final class CavityGap {
  /** A brick, and the block inside it (UK); common practice, from memory. */
  private static final long OUTER = 102_500_000;

  private static final long INNER = 100_000_000;

  /** What is left of it is no gap, or the inner leaf no leaf; from experience. */
  private static final long LEAST = 25_000_000;

  private static final long LEAST_LEAF = 50_000_000;

  private CavityGap() {}

  /**
   * The t range of the gap in the wall's own frame: behind the outer leaf of an outer wall, in the
   * middle of any other. Unless it was measured it is what brick and block leave of the wall. Empty
   * for a solid wall, and for one too thin for its leaves, which is taken as solid.
   */
  public static Optional<Interval> of(Wall wall) {
    if (wall.traits().cavity().filter(c -> c.there()).isEmpty() || wall.isFramed()) {
      return Optional.empty();
    }
    Interval core = wall.core();
    var stated = wall.traits().cavity().get();
    long outer = stated.outer().map(Length::nm).orElse(OUTER);
    long gap = stated.gap().map(Length::nm).orElse(core.length() - OUTER - INNER);
    if (gap < LEAST || core.length() - outer - gap < LEAST_LEAF) {
      return Optional.empty();
    }
    if (wall.outside() == 0) {
      return Optional.of(new Interval(core.lo() + outer, core.lo() + outer + gap));
    }
    if (wall.outside() == 1) {
      return Optional.of(new Interval(core.hi() - outer - gap, core.hi() - outer));
    }
    return Optional.of(new Interval(core.mid() - gap / 2, core.mid() - gap / 2 + gap));
  }
}
