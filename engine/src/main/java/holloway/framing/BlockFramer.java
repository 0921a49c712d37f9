package holloway.framing;

import holloway.geometry.Box;
import holloway.geometry.Interval;
import holloway.geometry.Point2;
import holloway.geometry.Polygon2;
import holloway.house.Fact;
import holloway.survey.Placed;
import holloway.survey.Wall;
import holloway.units.Length;
import java.util.List;

/** Solid blocks between the joists of one floor: over bearing walls, and in stated rows. */
final class BlockFramer {
  private static final long BLOCK = 38_000_000;

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
   * Blocking between the joists over each bearing wall of the level below that crosses them
   * (practice); their places are told to {@code bearings}.
   */
  void overBearings(List<Interval> bearings) {
    int order = placed.getLevel(deck.level()).order();
    for (Wall w : placed.walls()) {
      boolean crosses =
          Math.abs(
                  w.frame().u().x() * deck.frame().u().x()
                      + w.frame().u().y() * deck.frame().u().y())
              < 1e-6;
      boolean under = placed.getLevel(w.level()).order() == order - 1;
      if (!under || !crosses || w.isOuter() || !w.bearing().value()) {
        continue;
      }
      Point2 a = deck.frame().toLocal(w.world(0, (w.core().lo() + w.core().hi()) / 2, 0)).plan();
      Point2 b =
          deck.frame().toLocal(w.world(w.length(), (w.core().lo() + w.core().hi()) / 2, 0)).plan();
      Interval u = new Interval(a.x() - BLOCK / 2, a.x() + BLOCK / 2);
      bearings.add(u);
      row(u, new Interval(Math.min(a.y(), b.y()), Math.max(a.y(), b.y())), w.bearing().isAssumed());
    }
  }

  /** Stated rows, at distances from the floor's west or south outer edge. */
  void rows() {
    for (Fact<Length> at : deck.spec().blocksAt()) {
      long u = at.value().nm();
      row(new Interval(u - BLOCK / 2, u + BLOCK / 2), local.yRange(), at.isAssumed());
    }
  }

  private void row(Interval u, Interval v, boolean assumed) {
    for (Interval gap : v.without(deck.joists(), 5_000_000)) {
      boolean well = deck.wells().stream().anyMatch(o -> o.x().overlaps(u) && o.y().overlaps(gap));
      boolean inside =
          Sheets.insideAlong(local, gap.lo(), gap.hi()).stream()
              .anyMatch(i -> i.lo() <= u.lo() && i.hi() >= u.hi());
      if (!well && inside) {
        String id =
            deck.id() + "/blocking-" + WallFramer.tag(gap.lo()) + "-" + WallFramer.tag(u.lo());
        Box box =
            new Box(u.lo(), u.hi(), gap.lo(), gap.hi(), deck.joistZ().lo(), deck.joistZ().hi());
        members.add(new Member(id, MemberKind.BLOCKING, deck.frame(), box, deck.id(), assumed));
      }
    }
  }
}
