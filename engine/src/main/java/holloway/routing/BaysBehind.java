package holloway.routing;

import holloway.geometry.Box;
import holloway.geometry.Interval;
import holloway.geometry.Point3;
import holloway.hollow.Away;
import holloway.hollow.Hollow;
import holloway.hollow.HollowHouse;
import holloway.hollow.HollowKind;
import holloway.survey.BehindBoard;
import holloway.survey.OnWall;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The stud bays, or voids before them, that a box at a spot of a framed wall can be put into. */
final class BaysBehind {
  /** How far an outlet may move along its wall to miss a stud; the plan says by how much. */
  private static final long SHIFT = 90_000_000;

  /** A box keeps its middle so far from a stud. */
  static final long IN_BAY = 25_000_000;

  /** The least that tells a spot on one side of a stud from the other: a micrometre. */
  private static final long LEAN = 1_000;

  private final HollowHouse house;

  BaysBehind(HollowHouse house) {
    this.house = house;
  }

  /**
   * The bay at a spot, or those an outlet moves least to: two of them where a stud stands exactly
   * behind it, the one towards where layouts begin first.
   */
  List<Hollow> nearest(OnWall s) {
    Optional<Interval> before = BehindBoard.between(s.wall(), s.side());
    List<Interval> rows = s.wall().rows();
    Interval row = before.orElse(rows.get(s.side() == 0 ? 0 : rows.size() - 1));
    List<Hollow> best = new ArrayList<>();
    long least = SHIFT + 1;
    for (Hollow h : house.hollows()) {
      if (before.isPresent() ? h.kind().isBehindBoard() : h.kind() == HollowKind.STUD_BAY) {
        Point3 p = h.frame().toLocal(s.wall().world(s.s(), row.mid(), s.z()));
        Box b = h.clear();
        boolean level =
            p.z() > b.z0() + 20_000_000
                && p.z() < b.z1() - 20_000_000
                && p.y() >= b.y0()
                && p.y() <= b.y1();
        long off = Math.max(0, Math.max(b.x0() + IN_BAY - p.x(), p.x() - b.x1() + IN_BAY));
        if (level && b.x().length() > 2 * IN_BAY && off <= Math.min(least, SHIFT)) {
          if (off < least) {
            best.clear();
          }
          best.add(h);
          least = off;
        }
      }
    }
    Away away = new Away(house.framed().placed().house().layout());
    best.sort(
        Comparator.comparingLong((Hollow h) -> away.alongU(h.frame()) * h.clear().x().mid())
            .thenComparing(Hollow::id));
    return best;
  }

  /** The spot as it is, or one on each side of the stud that stands exactly behind it. */
  List<Ends.EndSpot> bothSides(Ends.EndSpot spot) {
    boolean boxed = !spot.outside() && spot.onWall().filter(s -> s.wall().isFramed()).isPresent();
    List<Hollow> bays = boxed ? nearest(spot.onWall().orElseThrow()) : List.of();
    if (bays.size() < 2) {
      return List.of(spot);
    }
    List<Ends.EndSpot> out = new ArrayList<>();
    for (Hollow bay : bays) {
      for (long lean : new long[] {-LEAN, LEAN}) {
        OnWall s = spot.onWall().orElseThrow();
        OnWall to = new OnWall(s.wall(), s.side(), s.s() + lean, s.z());
        if (nearest(to).equals(List.of(bay))) {
          out.add(spot.at(to));
        }
      }
    }
    return out.isEmpty() ? List.of(spot) : out;
  }
}
