package holloway.framing;

import holloway.geometry.Box;
import holloway.geometry.Interval;
import holloway.geometry.Point3;
import holloway.house.CeilingSpot;
import holloway.house.Found;
import holloway.house.WallSpot;
import holloway.survey.OnWall;
import holloway.survey.Placed;
import holloway.survey.PlacedRoom;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Finds the members that stated notches are cut into: the nearest joist or stud. The notch was seen
 * in the wood, so where a layout is assumed it goes to the member that stands nearest.
 *
 * @param cut in the order they were stated
 * @param nowhere those near which no such member is known
 */
public record Notches(List<Notch> cut, List<Found.Notch> nowhere) {
  /** Half of the widest usual spacing: a member further off is another one. */
  private static final long NEAR = 305_000_000;

  /** A joist's edge this far from the room's floor or ceiling is still the one that one sees. */
  private static final long THROUGH = 600_000_000;

  private static final Set<MemberKind> FLAT =
      EnumSet.of(MemberKind.JOIST, MemberKind.CEILING_JOIST);
  private static final Set<MemberKind> UPRIGHT =
      EnumSet.of(
          MemberKind.STUD,
          MemberKind.KING_STUD,
          MemberKind.JACK_STUD,
          MemberKind.CRIPPLE,
          MemberKind.POST);

  public Notches {
    cut = List.copyOf(cut);
    nowhere = List.copyOf(nowhere);
  }

  public static Notches of(Framed framed) {
    List<Notch> cut = new ArrayList<>();
    List<Found.Notch> nowhere = new ArrayList<>();
    for (Found f : framed.placed().house().found()) {
      if (f instanceof Found.Notch n) {
        Optional<Notch> there =
            n.cut() instanceof Found.InJoist j
                ? joist(framed, n, j)
                : stud(framed, n, ((Found.InStud) n.cut()).at());
        there.ifPresentOrElse(cut::add, () -> nowhere.add(n));
      }
    }
    return new Notches(cut, nowhere);
  }

  private static Optional<Notch> joist(Framed framed, Found.Notch n, Found.InJoist at) {
    Placed placed = framed.placed();
    CeilingSpot spot = at.at();
    PlacedRoom room = placed.getRoom(spot.room());
    Point3 p = ObstacleFramer.spot(room, spot).at(at.overhead() ? room.ceilingZ() : room.floorZ());
    Member best = null;
    long nearest = NEAR + 1;
    for (Member m : framed.members()) {
      if (FLAT.contains(m.kind())) {
        Point3 q = m.frame().toLocal(p);
        boolean alongX = m.box().x().length() >= m.box().y().length();
        boolean beside = (alongX ? m.box().x() : m.box().y()).contains(alongX ? q.x() : q.y());
        long across =
            Math.abs((alongX ? m.box().y() : m.box().x()).mid() - (alongX ? q.y() : q.x()));
        if (beside && across < nearest && isInReach(m.box().z(), q.z(), at.overhead())) {
          best = m;
          nearest = across;
        }
      }
    }
    return best == null ? Optional.empty() : Optional.of(inJoist(best, n, at.top(), p));
  }

  /** Over a ceiling the joist begins at or above it; under a floor it ends at or below it. */
  private static boolean isInReach(Interval z, long at, boolean overhead) {
    long gap = overhead ? z.lo() - at : at - z.hi();
    return -THROUGH / 10 <= gap && gap <= THROUGH;
  }

  private static Notch inJoist(Member m, Found.Notch n, boolean top, Point3 world) {
    Point3 q = m.frame().toLocal(world);
    Box b = m.box();
    long half = n.run().value().nm() / 2;
    long deep = Math.min(n.deep().value().nm(), b.z().length());
    Interval z = top ? new Interval(b.z1() - deep, b.z1()) : new Interval(b.z0(), b.z0() + deep);
    boolean alongX = b.x().length() >= b.y().length();
    Interval run = run(alongX ? b.x() : b.y(), alongX ? q.x() : q.y(), half);
    Box cut =
        alongX
            ? new Box(run.lo(), run.hi(), b.y0(), b.y1(), z.lo(), z.hi())
            : new Box(b.x0(), b.x1(), run.lo(), run.hi(), z.lo(), z.hi());
    return new Notch(m, cut, false, n);
  }

  private static Interval run(Interval whole, long at, long half) {
    return new Interval(whole.clamp(at - half), whole.clamp(at + half));
  }

  private static Optional<Notch> stud(Framed framed, Found.Notch n, WallSpot at) {
    Optional<OnWall> spot =
        framed.placed().findSpot(at.face(), at.along(), at.height().value().nm());
    if (spot.isEmpty()) {
      return Optional.empty();
    }
    OnWall s = spot.get();
    Member best = null;
    long nearest = NEAR + 1;
    for (Member m : framed.membersOf(s.wall().id())) {
      long off = Math.abs(m.box().x().mid() - s.s());
      if (UPRIGHT.contains(m.kind()) && m.box().z().contains(s.z()) && off < nearest) {
        best = m;
        nearest = off;
      }
    }
    return best == null ? Optional.empty() : Optional.of(inStud(best, n, s));
  }

  private static Notch inStud(Member m, Found.Notch n, OnWall s) {
    Box b = m.box();
    long deep = Math.min(n.deep().value().nm(), b.y().length());
    Interval y =
        s.side() == 0 ? new Interval(b.y0(), b.y0() + deep) : new Interval(b.y1() - deep, b.y1());
    Interval z = run(b.z(), s.z(), n.run().value().nm() / 2);
    return new Notch(m, new Box(b.x0(), b.x1(), y.lo(), y.hi(), z.lo(), z.hi()), true, n);
  }
}
