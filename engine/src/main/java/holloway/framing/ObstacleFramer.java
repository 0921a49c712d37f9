package holloway.framing;

import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Interval;
import holloway.geometry.Point2;
import holloway.house.CeilingSpot;
import holloway.house.Found;
import holloway.house.Obstacle;
import holloway.house.Side;
import holloway.house.Thing;
import holloway.survey.OnWall;
import holloway.survey.Placed;
import holloway.survey.PlacedRoom;
import java.util.List;
import java.util.Optional;

/**
 * Stated obstacles, blocks that were found, and what things seen in rooms give away (a tap has a
 * pipe behind it) as solids.
 */
final class ObstacleFramer {
  private static final long BLOCK = 38_000_000;
  private static final long PIPE_HALF = 40_000_000;

  private ObstacleFramer() {}

  static void frame(Placed placed, List<Deck> decks, List<Attic> attics, List<Member> members) {
    int n = 0;
    for (Obstacle o : placed.house().obstacles()) {
      n++;
      String name =
          "obstacle-"
              + n
              + "-"
              + o.kind().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
      o.inWall().ifPresent(w -> inWall(placed, o, w, name, members));
      o.inVoid()
          .ifPresent(
              v -> {
                if (o.kind() == Obstacle.Kind.PIER) {
                  pier(placed, v, decks, name, members);
                } else {
                  inVoid(placed, v, name, members);
                }
              });
    }
    for (Found f : placed.house().found()) {
      if (f instanceof Found.Block b) {
        placed
            .findSpot(b.face(), b.along(), b.height().value().nm())
            .ifPresent(s -> block(s, members));
      }
    }
    for (Thing t : placed.house().things()) {
      boolean piped =
          t.kind() == Thing.Kind.TAP
              || t.kind() == Thing.Kind.TOILET
              || t.kind() == Thing.Kind.RADIATOR;
      if (piped) {
        placed
            .findSpot(t.at().face(), t.at().along(), t.at().height().value().nm())
            .ifPresent(s -> pipe(s, t, members));
      }
    }
  }

  private static void inWall(
      Placed placed, Obstacle o, Obstacle.InWall at, String name, List<Member> members) {
    Optional<OnWall> low = placed.findSpot(at.face(), at.along(), at.bottom().value().nm());
    if (low.isEmpty()) {
      return;
    }
    OnWall s = low.get();
    boolean onward = at.along().from() == Side.WEST || at.along().from() == Side.SOUTH;
    long w = at.width().value().nm();
    Interval across = onward ? new Interval(s.s(), s.s() + w) : new Interval(s.s() - w, s.s());
    long top = s.z() + at.top().value().nm() - at.bottom().value().nm();
    MemberKind kind =
        switch (o.kind()) {
          case FIRE_BLOCK -> MemberKind.FIRE_BLOCK;
          case HEADER -> MemberKind.HEADER;
          default -> MemberKind.OBSTACLE;
        };
    add(s, name, kind, across, new Interval(s.z(), Math.max(top, s.z() + 1)), false, members);
  }

  private static void inVoid(Placed placed, Obstacle.InVoid at, String name, List<Member> members) {
    PlacedRoom room = placed.getRoom(at.at().room());
    Point2 p = spot(room, at.at());
    long ew = at.eastWest().nm() / 2;
    long ns = at.northSouth().nm() / 2;
    long z0 =
        switch (at.place()) {
          case ABOVE_CEILING -> room.ceilingZ() + 13_000_000;
          case BELOW_CEILING -> room.ceilingZ() - at.height().nm();
          case BELOW_FLOOR -> room.floorZ() - at.height().nm() - 20_000_000;
        };
    Box box = new Box(p.x() - ew, p.x() + ew, p.y() - ns, p.y() + ns, z0, z0 + at.height().nm());
    members.add(
        new Member(
            room.name() + "/" + name, MemberKind.OBSTACLE, Frame.WORLD, box, room.name(), false));
  }

  /** From the ground of the crawlspace it stands in to the underside of the joists. */
  private static void pier(
      Placed placed, Obstacle.InVoid at, List<Deck> decks, String name, List<Member> members) {
    PlacedRoom room = placed.getRoom(at.at().room());
    Point2 p = spot(room, at.at());
    long ew = at.eastWest().nm() / 2;
    long ns = at.northSouth().nm() / 2;
    for (Deck d : decks) {
      boolean under = d.level().equals(room.room().level()) && d.outline().contains(p);
      if (under && d.spec().crawlspace().isPresent()) {
        long top = d.frame().origin().z() + d.joistZ().lo();
        long foot = top - d.spec().crawlspace().get().clearance().value().nm();
        Box box = new Box(p.x() - ew, p.x() + ew, p.y() - ns, p.y() + ns, foot, top);
        String id = room.name() + "/" + name;
        members.add(new Member(id, MemberKind.OBSTACLE, Frame.WORLD, box, room.name(), false));
      }
    }
  }

  /** The world plan point of a spot taped from two sides of a room's box. */
  static Point2 spot(PlacedRoom room, CeilingSpot at) {
    Interval x = room.outline().xRange();
    Interval y = room.outline().yRange();
    long dx = at.eastWest().distance().value().nm();
    long dy = at.northSouth().distance().value().nm();
    return new Point2(
        at.eastWest().from() == Side.WEST ? x.lo() + dx : x.hi() - dx,
        at.northSouth().from() == Side.SOUTH ? y.lo() + dy : y.hi() - dy);
  }

  /** A found block fills its bay from upright to upright. */
  private static void block(OnWall s, List<Member> members) {
    if (!s.wall().isFramed()) {
      return;
    }
    long lo = 0;
    long hi = s.wall().length();
    for (Member m : members) {
      boolean upright =
          m.owner().equals(s.wall().id())
              && m.box().z().contains(s.z())
              && m.kind() != MemberKind.FIRE_BLOCK
              && m.kind().isTimber();
      if (upright) {
        lo = m.box().x1() <= s.s() ? Math.max(lo, m.box().x1()) : lo;
        hi = m.box().x0() >= s.s() ? Math.min(hi, m.box().x0()) : hi;
      }
    }
    add(
        s,
        "found-block-" + WallFramer.tag(s.s()),
        MemberKind.FIRE_BLOCK,
        new Interval(lo, hi),
        new Interval(s.z() - BLOCK / 2, s.z() + BLOCK / 2),
        false,
        members);
  }

  /**
   * Taps, toilets and radiators: a pipe rises behind them from the floor, as a guess that says so.
   */
  private static void pipe(OnWall s, Thing t, List<Member> members) {
    String name =
        "pipe-" + t.kind().name().toLowerCase(java.util.Locale.ROOT) + "-" + WallFramer.tag(s.s());
    add(
        s,
        name,
        MemberKind.OBSTACLE,
        new Interval(s.s() - PIPE_HALF, s.s() + PIPE_HALF),
        new Interval(WallFramer.PLATE, Math.max(WallFramer.PLATE + 1, s.z())),
        true,
        members);
  }

  private static void add(
      OnWall s,
      String name,
      MemberKind kind,
      Interval across,
      Interval z,
      boolean assumed,
      List<Member> members) {
    Interval t = s.wall().core();
    Box box = new Box(across.lo(), across.hi(), t.lo(), t.hi(), z.lo(), z.hi());
    members.add(
        new Member(
            s.wall().id() + "/" + name, kind, s.wall().frame(), box, s.wall().id(), assumed));
  }
}
