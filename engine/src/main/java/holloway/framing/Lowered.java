package holloway.framing;

import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Interval;
import holloway.geometry.Point2;
import holloway.geometry.Polygon2;
import holloway.house.Along;
import holloway.house.FaceRef;
import holloway.house.Fact;
import holloway.house.Side;
import holloway.house.Soffit;
import holloway.survey.Makeup;
import holloway.survey.OnWall;
import holloway.survey.Placed;
import holloway.survey.PlacedRoom;
import holloway.survey.Wall;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A lowered ceiling in its place: a box along a wall in that wall's frame, or the whole ceiling of
 * a room.
 *
 * @param shell outside of it as seen, up to the ceiling
 * @param clear inside its board or tiles
 * @param area the room's outline for a whole ceiling
 * @param wall the wall a box runs along, and on which of its sides
 */
public record Lowered(
    Soffit soffit,
    Frame frame,
    Box shell,
    Box clear,
    Optional<Polygon2> area,
    Optional<OnWall> wall) {
  /** Board and tiles alike; common practice, no published source. */
  public static final long BOARD = Makeup.BOARD;

  /** An end so near to the corner of the room is shut by the wall there. */
  private static final long AT_WALL = 20_000_000;

  /** All lowered ceilings whose place is known, by name. */
  public static List<Lowered> of(Placed placed) {
    List<Lowered> out = new ArrayList<>();
    for (Soffit s : placed.house().soffits()) {
      if (s.face().isEmpty()) {
        out.add(whole(s, placed.getRoom(s.room())));
      } else {
        box(s, s.face().get(), placed).ifPresent(out::add);
      }
    }
    return out;
  }

  /** The underside of what a person sees over a room: its ceiling, or the one hung below it. */
  public static long visibleCeiling(Placed placed, PlacedRoom room) {
    return room.ceilingZ()
        - placed.house().soffits().stream()
            .filter(s -> s.face().isEmpty() && s.room().equals(room.name()))
            .mapToLong(s -> s.drop().value().nm())
            .max()
            .orElse(0);
  }

  /** True when the plan point lies under this box or ceiling. */
  public boolean covers(Point2 p) {
    var q = frame.toLocal(p.at(frame.origin().z()));
    return area.map(a -> a.contains(p))
        .orElse(shell.x().contains(q.x()) && shell.y().contains(q.y()));
  }

  public String id() {
    return "soffit/" + soffit.name();
  }

  private static Lowered whole(Soffit s, PlacedRoom r) {
    Frame frame = frame(s, r.outline());
    Polygon2 seen = DeckFramer.toLocal(r.outline(), frame);
    Interval x = seen.xRange();
    Interval y = seen.yRange();
    long low = r.ceilingZ() - s.drop().value().nm();
    Box shell = new Box(x.lo(), x.hi(), y.lo(), y.hi(), low, r.ceilingZ());
    Box clear = new Box(x.lo(), x.hi(), y.lo(), y.hi(), low + BOARD, r.ceilingZ());
    return new Lowered(s, frame, shell, clear, Optional.of(r.outline()), Optional.empty());
  }

  /**
   * Behind board cable is fished along the longer way, whichever way the house is turned; over
   * tiles it is laid, along the axes of the world.
   */
  private static Frame frame(Soffit s, Polygon2 outline) {
    long more = outline.yRange().length() - outline.xRange().length();
    return !s.cover().comesOut() && more > Length.NM_PER_MM
        ? Frame.northSouth(Frame.WORLD.origin())
        : Frame.WORLD;
  }

  private static Optional<Lowered> box(Soffit s, FaceRef face, Placed placed) {
    List<Placed.Segment> faces = placed.listFaces(face.room(), face.side());
    if (face.ordinal() > faces.size()) {
      return Optional.empty();
    }
    Placed.Segment seg = faces.get(face.ordinal() - 1);
    long whole = seg.start().at(0).distanceTo(seg.end().at(0));
    Side low = face.side().runsEastWest() ? Side.WEST : Side.SOUTH;
    Along from = s.along().orElse(new Along(low, Fact.assumed(Length.ZERO)));
    long start = Math.min(whole, from.distance().value().nm());
    long length = Math.min(whole - start, s.length().map(l -> l.value().nm()).orElse(whole));
    Along mid = new Along(from.from(), Fact.assumed(new Length(start + length / 2)));
    PlacedRoom room = placed.getRoom(face.room());
    return placed
        .findSpot(face, mid, room.ceilingZ() - room.floorZ())
        .filter(w -> length > 0)
        .map(w -> along(s, w, length));
  }

  private static Lowered along(Soffit s, OnWall w, long length) {
    Wall wall = w.wall();
    long out = s.out().orElseThrow().value().nm();
    long t0 = w.side() == 0 ? -out : wall.thickness();
    long z1 = w.z();
    long z0 = z1 - s.drop().value().nm();
    Box shell = new Box(w.s() - length / 2, w.s() + length / 2, t0, t0 + out, z0, z1);
    long in0 = w.side() == 0 ? t0 + BOARD : t0;
    Interval face =
        wall.findFace(w.side(), w.s()).map(Wall.WallFace::s).orElse(new Interval(0, wall.length()));
    long x0 = shell.x0() + (shell.x0() > face.lo() + AT_WALL ? BOARD : 0);
    long x1 = shell.x1() - (shell.x1() < face.hi() - AT_WALL ? BOARD : 0);
    Box clear = new Box(x0, Math.max(x0, x1), in0, in0 + out - BOARD, z0 + BOARD, z1);
    return new Lowered(s, wall.frame(), shell, clear, Optional.empty(), Optional.of(w));
  }
}
