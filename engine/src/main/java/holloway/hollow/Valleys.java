package holloway.hollow;

import holloway.framing.Attic;
import holloway.geometry.Interval;
import holloway.geometry.Point2;
import holloway.geometry.Polygon2;
import holloway.house.Direction;
import holloway.house.Roof;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;

/**
 * Where one roof runs onto another and the sheathing of the lower one was cut out below it: the way
 * from attic to attic leads over the wall that both rest on, between the rafters of the lower roof,
 * which still stand, and under the upper one's slope. The upper roof's slopes go on level over that
 * wall (a gable's ridge runs square to it), the lower one's comes down to it.
 */
final class Valleys {
  /** From experience: an arm passes a gap of this width and height. */
  private static final long LEAST = 150_000_000;

  private static final long BODY = Math.round(AtticSpace.BODY_MM * 1e6);
  private static final long HATCH = Math.round(AtticSpace.HATCH_LEAST_MM * 1e6);

  /** Two spots of one slope from which its fall is read. */
  private static final long APART = 300_000_000;

  private Valleys() {}

  /** A way between each two rafters of the lower roof; none if there is no valley. */
  static List<AtticJoins.Place> places(AtticJoins.Place wall, Interval open) {
    List<AtticJoins.Place> out = new ArrayList<>();
    if (unfit(wall).isPresent()) {
      return out;
    }
    for (Interval gap : gaps(wall, open)) {
      long high = high(wall, gap);
      if (gap.length() >= LEAST && high >= LEAST) {
        out.add(
            new AtticJoins.Place(
                wall.a(),
                wall.b(),
                along(wall.inA(), wall, gap.mid()),
                along(wall.inB(), wall, gap.mid()),
                wall.sill(),
                gap.length(),
                high,
                wall.join()));
      }
    }
    return out;
  }

  /** Why the first of two roofs does not run onto the second at the wall they both rest on. */
  static Optional<String> unfit(AtticJoins.Place wall) {
    Attic over = wall.a();
    Attic onto = wall.b();
    Point2 back = out(wall.inA(), wall, -APART);
    if (over.slopeUnderside(wall.inA()) != over.slopeUnderside(back)) {
      return Optional.of(
          "the slopes of "
              + over.id()
              + " do not run on level over that wall: a gable's ridge has to run square to it");
    }
    boolean across =
        onto.chordRun() == (northSouth(wall) ? Direction.EAST_WEST : Direction.NORTH_SOUTH);
    if (!across
        || onto.slopeUnderside(out(wall.inB(), wall, APART)) <= onto.slopeUnderside(wall.inB())) {
      return Optional.of("the slope of " + onto.id() + " does not come down to that wall");
    }
    return Optional.empty();
  }

  /** How little height and width the slopes and rafters leave. */
  static String tight(AtticJoins.Place wall, Interval open) {
    long best =
        gaps(wall, open).stream()
            .filter(g -> g.length() >= LEAST)
            .mapToLong(g -> high(wall, g))
            .max()
            .orElse(0);
    return "between the rafters of "
        + wall.b().id()
        + " there are at most "
        + Math.round(Math.max(0, best) / 1e6)
        + " mm of height under the slope of "
        + wall.a().id();
  }

  /** Where a body fits in the lower attic below the upper roof, millimetres. */
  static List<Geometry> bodies(Attic onto, List<AtticJoins.Place> places, double insetMm) {
    List<Geometry> out = new ArrayList<>();
    for (AtticJoins.Place p : places) {
      boolean here = p.join().valley().isPresent() && p.b().id().equals(onto.id());
      if (here && p.wide() >= HATCH && p.high() >= BODY) {
        Polygon2 o = onto.outline();
        boolean ns = northSouth(p);
        boolean up = ns ? p.inB().x() > p.inA().x() : p.inB().y() > p.inA().y();
        Interval t = ns ? o.xRange() : o.yRange();
        double near = (up ? t.lo() : t.hi()) / 1e6;
        double far = near + (up ? 1 : -1) * (insetMm + 1);
        double mid = (ns ? p.inB().y() : p.inB().x()) / 1e6;
        double half = p.wide() / 2e6;
        out.add(
            ns
                ? Spaces.rectangle(Math.min(near, far), mid - half, Math.max(near, far), mid + half)
                : Spaces.rectangle(
                    mid - half, Math.min(near, far), mid + half, Math.max(near, far)));
      }
    }
    return out;
  }

  /** Between neighbouring rafters of the lower roof, along the wall, within the opening. */
  private static List<Interval> gaps(AtticJoins.Place wall, Interval open) {
    List<Interval> rafters =
        wall.b().chords().stream().sorted(Comparator.comparingLong(Interval::lo)).toList();
    List<Interval> out = new ArrayList<>();
    for (int i = 1; i < rafters.size(); i++) {
      long lo = Math.max(rafters.get(i - 1).hi(), open.lo());
      long hi = Math.min(rafters.get(i).lo(), open.hi());
      if (hi > lo) {
        out.add(new Interval(lo, hi));
      }
    }
    return out;
  }

  /** Under the upper slope, least over a gap; a stated hole may end lower. */
  private static long high(AtticJoins.Place wall, Interval gap) {
    long lo = wall.a().slopeUnderside(along(wall.inA(), wall, gap.lo()));
    long hi = wall.a().slopeUnderside(along(wall.inA(), wall, gap.hi()));
    long under = Math.min(lo, hi) - wall.sill();
    boolean hole = wall.join().valley().equals(Optional.of(Roof.Valley.LAID_OVER));
    return hole ? Math.min(under, wall.join().high().nm()) : under;
  }

  private static boolean northSouth(AtticJoins.Place wall) {
    return wall.inA().y() == wall.inB().y();
  }

  private static Point2 along(Point2 p, AtticJoins.Place wall, long s) {
    return northSouth(wall) ? new Point2(p.x(), s) : new Point2(s, p.y());
  }

  /** So much further into the lower roof's attic. */
  private static Point2 out(Point2 p, AtticJoins.Place wall, long by) {
    long dx = Long.signum(wall.inB().x() - wall.inA().x());
    long dy = Long.signum(wall.inB().y() - wall.inA().y());
    return p.plus(dx * by, dy * by);
  }
}
