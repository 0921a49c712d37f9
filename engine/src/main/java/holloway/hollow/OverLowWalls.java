package holloway.hollow;

import holloway.geometry.Interval;
import holloway.geometry.Point3;
import holloway.survey.Makeup;
import holloway.survey.Wall;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * The way over a partition that stops short of the ceiling above, from the void over one lowered
 * ceiling to that over the next: nothing is bored there.
 */
final class OverLowWalls {
  /** A slit lower than this is no way for a hand with a cable; from experience. */
  private static final long LEAST = 50_000_000;

  private static final long FROM_END = 80_000_000;

  /** Cable over the wall. */
  private static final long CABLE = 4_500_000;

  private final Draft draft;
  private final List<Interest> interests;

  OverLowWalls(Draft draft, List<Interest> interests) {
    this.draft = draft;
    this.interests = interests;
  }

  /** What the wall's top leaves of a void that lies on both sides of it; all in its own frame. */
  static Optional<Interval> gap(Wall w, Interval z) {
    long top = w.height() + Makeup.CAP;
    return z.hi() - top < LEAST
        ? Optional.empty()
        : Optional.of(new Interval(Math.max(z.lo(), top), z.hi())).filter(g -> g.length() >= LEAST);
  }

  /** Near both ends of the stretch that both voids share, and beside each wanted spot. */
  void pass(Wall w, Interval s, Interval z, String low, String high) {
    Optional<Interval> gap = gap(w, z);
    if (gap.isEmpty()) {
      return;
    }
    TreeSet<Long> spots = new TreeSet<>(List.of(s.lo() + FROM_END, s.hi() - FROM_END));
    Interval within = new Interval(s.lo() + FROM_END, s.hi() - FROM_END);
    for (Interest i : interests) {
      i.onWall().filter(o -> o.wall() == w).ifPresent(o -> spots.add(within.clamp(o.s())));
    }
    for (long at : spots) {
      Point3 a = w.world(at, 0, gap.get().mid());
      Point3 b = w.world(at, w.thickness(), gap.get().mid());
      String id = w.id() + "/over-the-top/" + Tags.of(at);
      if (!draft.has(id) && draft.solids.free(a, b, CABLE)) {
        List<Site.Layer> layers = List.of(new Site.Layer("opening", a.distanceTo(b)));
        draft.keep(
            new Site(
                id, SiteKind.OPENING, a, b, low, high, List.of(), layers, 51, 51, true, false));
      }
    }
  }
}
