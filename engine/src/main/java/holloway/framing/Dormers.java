package holloway.framing;

import holloway.geometry.Box;
import holloway.geometry.Interval;
import holloway.geometry.Point2;
import holloway.house.Dormer;
import holloway.house.Roof;
import holloway.house.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Where the dormers of a roof stand over its attics. */
public final class Dormers {
  /** A shorter one is no dormer: somebody taped another thing. */
  private static final long LEAST = 100_000_000;

  private Dormers() {}

  /** A part of the roof with those dormers that stand in its slopes. */
  static Attic in(Attic shell, Interval all) {
    List<PlacedDormer> out = new ArrayList<>();
    for (Dormer d : shell.roof().dormers()) {
      if (trouble(shell, all, d).isEmpty()) {
        out.add(placed(shell, all, d));
      }
    }
    return shell.with(out);
  }

  /** The stretch along the eaves that all parts of a roof take together. */
  static Interval all(List<? extends holloway.geometry.Polygon2> parts, boolean eastWest) {
    long lo = Long.MAX_VALUE;
    long hi = Long.MIN_VALUE;
    for (var p : parts) {
      Interval i = eastWest ? p.xRange() : p.yRange();
      lo = Math.min(lo, i.lo());
      hi = Math.max(hi, i.hi());
    }
    return new Interval(lo, hi);
  }

  /** Why a stated dormer stands over no attic of its roof; empty for one that does. */
  public static Optional<String> trouble(List<Attic> attics, Roof roof, Dormer d) {
    List<Attic> own =
        attics.stream().filter(a -> a.roof().name().equals(roof.name())).distinct().toList();
    if (own.stream().anyMatch(a -> a.dormers().stream().anyMatch(p -> p.dormer().equals(d)))) {
      return Optional.empty();
    }
    if (own.isEmpty()) {
      return Optional.of("no attic lies under this roof");
    }
    Interval all = all(own.stream().map(Attic::roofline).toList(), d.side().runsEastWest());
    return own.stream().flatMap(a -> trouble(a, all, d).stream()).findFirst();
  }

  private static Optional<String> trouble(Attic shell, Interval all, Dormer d) {
    Interval along = along(all, d);
    Interval here = range(shell, d.side().runsEastWest());
    if (along.lo() < here.lo() || along.hi() > here.hi()) {
      return Optional.of("it reaches past the end of the roof, or over a part between two storeys");
    }
    long reach = reach(shell, d.side());
    double meets = meetsMm(shell, d);
    double back = d.back().value().toMm();
    if (meets - back < LEAST / 1e6) {
      return Optional.of(
          String.format(
              Locale.ROOT,
              "%.0f mm from the eave the rafters are already as high as its front",
              Math.max(0, back)));
    }
    if (meets > reach / 1e6) {
      return Optional.of("its front is higher than the ridge");
    }
    return Optional.empty();
  }

  private static PlacedDormer placed(Attic shell, Interval all, Dormer d) {
    Interval along = along(all, d);
    Interval deep = new Interval(d.back().value().nm(), Math.round(meetsMm(shell, d) * 1e6));
    long z0 = shell.chordTopZ();
    long z1 = z0 + d.height().value().nm();
    long eave = eave(shell, d.side());
    boolean up = d.side() == Side.SOUTH || d.side() == Side.WEST;
    Interval in =
        up
            ? new Interval(eave + deep.lo(), eave + deep.hi())
            : new Interval(eave - deep.hi(), eave - deep.lo());
    return new PlacedDormer(
        d,
        d.side().runsEastWest()
            ? new Box(along.lo(), along.hi(), in.lo(), in.hi(), z0, z1)
            : new Box(in.lo(), in.hi(), along.lo(), along.hi(), z0, z1));
  }

  private static Interval along(Interval all, Dormer d) {
    long off = d.from().distance().value().nm();
    long wide = d.width().value().nm();
    boolean low = d.from().from() == Side.WEST || d.from().from() == Side.SOUTH;
    long lo = low ? all.lo() + off : all.hi() - off - wide;
    return new Interval(lo, lo + wide);
  }

  private static Interval range(Attic shell, boolean x) {
    return x ? shell.roofline().xRange() : shell.roofline().yRange();
  }

  /** Level from the eave to the inside of its front. */
  static long inset(Attic shell, PlacedDormer d) {
    Side side = d.dormer().side();
    Interval in = side.runsEastWest() ? d.clear().y() : d.clear().x();
    long eave = eave(shell, side);
    return RafterFramer.isUp(side) ? in.lo() - eave : eave - in.hi();
  }

  static long eave(Attic shell, Side side) {
    Interval across = range(shell, !side.runsEastWest());
    return side == Side.SOUTH || side == Side.WEST ? across.lo() : across.hi();
  }

  private static long reach(Attic shell, Side side) {
    long whole = range(shell, !side.runsEastWest()).length();
    return shell.roof().shape() == Roof.Shape.SHED ? whole : whole / 2;
  }

  /** Level from the eave to where the rafters' underside is as high as the dormer's front. */
  private static double meetsMm(Attic shell, Dormer d) {
    Interval x = shell.roofline().xRange();
    Interval y = shell.roofline().yRange();
    Point2 atEave =
        switch (d.side()) {
          case SOUTH -> new Point2(x.mid(), y.lo());
          case NORTH -> new Point2(x.mid(), y.hi());
          case WEST -> new Point2(x.lo(), y.mid());
          case EAST -> new Point2(x.hi(), y.mid());
        };
    double slope = shell.roof().pitchRise() / (double) shell.roof().pitchRun();
    double lacking =
        (shell.chordTopZ() + d.height().value().nm() - shell.slopeUnderside(atEave)) / 1e6;
    return slope <= 0 ? Double.MAX_VALUE : lacking / slope;
  }
}
