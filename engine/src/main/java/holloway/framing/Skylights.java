package holloway.framing;

import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Interval;
import holloway.geometry.Point2;
import holloway.house.Direction;
import holloway.house.Roof;
import holloway.survey.Placed;
import holloway.survey.PlacedRoom;
import java.util.ArrayList;
import java.util.List;

/**
 * Shafts of skylights: solid from the ceiling up through the roof, and with headers between the
 * joists on either side of them at the joists' height, so that those bays end there.
 */
public final class Skylights {
  /** A 2x4 on edge and board round the opening; nobody measured it, from memory. */
  private static final long SHAFT = 102_000_000;

  /** How far a shaft goes on over the rafters' undersides, past any rafter. */
  private static final long THROUGH = 400_000_000;

  private Skylights() {}

  /** True where a shaft or what frames it stands over a point of a room's ceiling. */
  public static boolean isOver(Placed placed, PlacedRoom room, Point2 p) {
    for (Roof roof : placed.house().roofs()) {
      for (Roof.Skylight k : roof.skylights()) {
        if (k.at().room().equals(room.name()) && shaft(room, k, 0, 1).holds(p)) {
          return true;
        }
      }
    }
    return false;
  }

  /** Two opposite corners of each of a roof's shafts, in plan: what goes round bends there. */
  public static List<Point2> corners(Placed placed, Roof roof) {
    List<Point2> out = new ArrayList<>();
    for (Roof.Skylight k : roof.skylights()) {
      Box b = shaft(placed.getRoom(k.at().room()), k, 0, 1).box();
      out.add(new Point2(b.x0(), b.y0()));
      out.add(new Point2(b.x1(), b.y1()));
    }
    return out;
  }

  static void frame(Placed placed, List<Deck> decks, List<Attic> attics, List<Member> members) {
    List<FlatRoof> flat = FlatRoof.of(placed, decks);
    int n = 0;
    for (Roof roof : placed.house().roofs()) {
      for (Roof.Skylight k : roof.skylights()) {
        n++;
        PlacedRoom room = placed.getRoom(k.at().room());
        String id = room.name() + "/skylight-" + n;
        Point2 p = ObstacleFramer.spot(room, k.at());
        long top = room.ceilingZ() + roof.chord().value().depth().nm();
        for (Attic a : attics) {
          if (a.roof().name().equals(roof.name()) && a.outline().contains(p)) {
            boolean ns = a.chordRun() == Direction.NORTH_SOUTH;
            top = Math.max(top, highest(a, shaft(room, k, 0, 1).box()));
            Interval z = new Interval(room.ceilingZ(), a.chordTopZ());
            add(id + "-header", headers(room, k, a.chords(), ns, z), room, members);
          }
        }
        for (FlatRoof f : flat) {
          if (f.roof().name().equals(roof.name()) && f.outline().contains(p)) {
            long under = f.frame().origin().z();
            top = Math.max(top, under + f.z().hi());
            boolean ns = roof.run().orElseThrow() == Direction.NORTH_SOUTH;
            Interval z = new Interval(room.ceilingZ(), under + f.z().hi());
            add(id + "-header", headers(room, k, joists(f, ns), ns, z), room, members);
          }
        }
        add(id + "-shaft", shaft(room, k, room.ceilingZ(), top + THROUGH).box(), room, members);
      }
    }
  }

  /** A box in the world, seen from above. */
  private record Upright(Box box) {
    boolean holds(Point2 p) {
      return box.x().contains(p.x()) && box.y().contains(p.y());
    }
  }

  private static Upright shaft(PlacedRoom room, Roof.Skylight k, long z0, long z1) {
    Point2 p = ObstacleFramer.spot(room, k.at());
    long ew = k.eastWest().nm() / 2 + SHAFT;
    long ns = k.northSouth().nm() / 2 + SHAFT;
    return new Upright(new Box(p.x() - ew, p.x() + ew, p.y() - ns, p.y() + ns, z0, z1));
  }

  private static long highest(Attic a, Box b) {
    long top = a.chordTopZ();
    for (long x : new long[] {b.x0(), b.x().mid(), b.x1()}) {
      for (long y : new long[] {b.y0(), b.y().mid(), b.y1()}) {
        top = Math.max(top, a.roofUnderside(new Point2(x, y)));
      }
    }
    return top;
  }

  /** World plan ranges of a flat roof's joists across their run. */
  private static List<Interval> joists(FlatRoof f, boolean ns) {
    List<Interval> out = new ArrayList<>();
    long x = f.frame().origin().x();
    long y = f.frame().origin().y();
    for (Interval v : f.joists()) {
      out.add(ns ? new Interval(x - v.hi(), x - v.lo()) : new Interval(y + v.lo(), y + v.hi()));
    }
    return out;
  }

  /** From the joist that stands clear of the opening on one side to that on the other. */
  private static Box headers(
      PlacedRoom room, Roof.Skylight k, List<Interval> joists, boolean ns, Interval z) {
    Box s = shaft(room, k, z.lo(), z.hi()).box();
    Interval across = ns ? s.x() : s.y();
    Interval open = new Interval(across.lo() + SHAFT, across.hi() - SHAFT);
    long lo = Long.MIN_VALUE;
    long hi = Long.MAX_VALUE;
    for (Interval j : joists) {
      lo = j.hi() <= open.lo() ? Math.max(lo, j.hi()) : lo;
      hi = j.lo() >= open.hi() ? Math.min(hi, j.lo()) : hi;
    }
    lo = lo == Long.MIN_VALUE ? across.lo() : lo;
    hi = hi == Long.MAX_VALUE ? across.hi() : hi;
    return ns
        ? new Box(lo, hi, s.y0(), s.y1(), z.lo(), z.hi())
        : new Box(s.x0(), s.x1(), lo, hi, z.lo(), z.hi());
  }

  private static void add(String id, Box box, PlacedRoom room, List<Member> members) {
    members.add(new Member(id, MemberKind.OBSTACLE, Frame.WORLD, box, room.name(), true));
  }
}
