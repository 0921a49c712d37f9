package holloway.framing;

import holloway.geometry.Box;
import holloway.geometry.Interval;
import holloway.geometry.Point2;
import holloway.geometry.Polygon2;
import holloway.house.Fact;
import holloway.survey.Placed;
import holloway.survey.PlacedLevel;
import holloway.survey.Wall;
import holloway.units.Length;
import java.util.List;

/** Solid blocks between the joists of one floor: over walls that carry them, and in stated rows. */
final class BlockFramer {
  private static final long BLOCK = 38_000_000;
  private static final long SLIVER = 5_000_000;

  /** A wall so nearly along the joists crosses none of their bays. */
  private static final double ALONG = 0.999;

  private final Placed placed;
  private final Deck deck;
  private final Polygon2 local;
  private final List<Member> members;

  BlockFramer(Placed placed, Deck deck, Polygon2 local, List<Member> members) {
    this.placed = placed;
    this.deck = deck;
    this.local = local;
    this.members = members;
  }

  /**
   * Blocking between the joists over each wall of the level below that crosses them (practice): a
   * bearing one, or an outer one that the floor runs past. Square ones are told to {@code
   * bearings}.
   */
  void overWalls(List<Interval> bearings) {
    PlacedLevel own = placed.getLevel(deck.level());
    for (Wall w : placed.walls()) {
      boolean under = own.isNextOver(placed.getLevel(w.level()));
      double along = along(w);
      if (!under || along > ALONG || !(w.isOuter() || w.bearing().value())) {
        continue;
      }
      Point2 a = deck.frame().toLocal(w.world(0, w.core().mid(), 0)).plan();
      Point2 b = deck.frame().toLocal(w.world(w.length(), w.core().mid(), 0)).plan();
      Interval u = new Interval(a.x() - BLOCK / 2, a.x() + BLOCK / 2);
      if (w.isOuter() || along >= 1e-6) {
        boolean crossed = askew(w, a, b);
        if (crossed && along < 1e-6) {
          bearings.add(u);
        }
        continue;
      }
      bearings.add(u);
      if (!deck.spec().clearOverWalls()) {
        Interval v = new Interval(Math.min(a.y(), b.y()), Math.max(a.y(), b.y()));
        row(u, v, w.bearing().isAssumed());
      }
    }
  }

  private double along(Wall w) {
    return Math.abs(
        w.frame().u().x() * deck.frame().u().x() + w.frame().u().y() * deck.frame().u().y());
  }

  /**
   * Blocks in every whole bay that an outer or angled wall passes under, as long as the wall's
   * middle line takes to cross it. An outer wall at the floor's own edge has the rim over it and
   * needs none.
   *
   * @return whether the floor runs past the wall anywhere
   */
  private boolean askew(Wall w, Point2 a, Point2 b) {
    double along = along(w);
    long half = Math.round(w.core().length() / 2.0 / Math.sqrt(1 - along * along));
    Interval wall = new Interval(Math.min(a.y(), b.y()), Math.max(a.y(), b.y()));
    boolean crossed = false;
    for (Interval gap : local.yRange().without(deck.joists(), SLIVER)) {
      Interval part = gap.cut(wall).orElse(new Interval(0, 0));
      if (part.length() < SLIVER) {
        continue;
      }
      long p = at(a, b, part.lo());
      long q = at(a, b, part.hi());
      Interval line = new Interval(Math.min(p, q), Math.max(p, q));
      if (runsPast(new Interval(line.lo() - half, line.hi() + half), part)) {
        crossed = true;
        if (!deck.spec().clearOverWalls()) {
          block(new Interval(line.lo() - BLOCK / 2, line.hi() + BLOCK / 2), gap, true);
        }
      }
    }
    return crossed;
  }

  private static long at(Point2 a, Point2 b, long v) {
    return a.x() + Math.round((b.x() - a.x()) * ((v - a.y()) / (double) (b.y() - a.y())));
  }

  /** There is floor on both sides of a wall, further than its own rim is thick. */
  private boolean runsPast(Interval core, Interval v) {
    return Sheets.insideAlong(local, v.lo(), v.hi()).stream()
        .anyMatch(i -> i.lo() < core.lo() - BLOCK && i.hi() > core.hi() + BLOCK);
  }

  /** Stated rows, from the floor's west or south outer edge, or back from the one over there. */
  void rows() {
    for (Fact<Length> at : deck.spec().blocksAt()) {
      long nm = at.value().nm();
      long u = nm < 0 ? local.xRange().hi() + nm : nm;
      row(new Interval(u - BLOCK / 2, u + BLOCK / 2), local.yRange(), at.isAssumed());
    }
  }

  private void row(Interval u, Interval v, boolean assumed) {
    for (Interval gap : v.without(deck.joists(), SLIVER)) {
      boolean inside =
          Sheets.insideAlong(local, gap.lo(), gap.hi()).stream()
              .anyMatch(i -> i.lo() <= u.lo() && i.hi() >= u.hi());
      if (inside) {
        block(u, gap, assumed);
      }
    }
  }

  private void block(Interval u, Interval gap, boolean assumed) {
    if (deck.wells().stream().anyMatch(o -> o.x().overlaps(u) && o.y().overlaps(gap))) {
      return;
    }
    String id = deck.id() + "/blocking-" + WallFramer.tag(gap.lo()) + "-" + WallFramer.tag(u.lo());
    Box box = new Box(u.lo(), u.hi(), gap.lo(), gap.hi(), deck.joistZ().lo(), deck.joistZ().hi());
    members.add(new Member(id, MemberKind.BLOCKING, deck.frame(), box, deck.id(), assumed));
  }
}
