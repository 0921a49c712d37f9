package holloway.report;

import holloway.geometry.Point2;
import holloway.geometry.Point3;
import holloway.geometry.Polygon2;
import holloway.geometry.Turn;
import holloway.survey.Placed;
import holloway.survey.PlacedPorch;
import holloway.survey.PlacedRoom;
import holloway.survey.Wall;
import holloway.survey.WallNames;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A world point in words: which wall and how far along it, or which room it is in, over or under.
 */
public final class PlaceWords {
  private static final long SLACK = 60_000_000L;

  /** A bore through plates and floor has its middle between the walls of two storeys. */
  private static final long BETWEEN = 400_000_000L;

  private final Placed placed;
  private final UnitWords units;

  /** In the units usual where the house stands. */
  public PlaceWords(Placed placed) {
    this(placed, new UnitWords(UnitWords.usual(placed.house())));
  }

  PlaceWords(Placed placed, UnitWords units) {
    this.placed = placed;
    this.units = units;
  }

  /** What north means in the words of a house that stands turned. */
  static Optional<String> turned(Turn turn) {
    return Optional.of(turn)
        .filter(t -> !t.isNone())
        .map(
            t ->
                "the house stands turned %s: north and the other sides are its own, coordinates are those of its site"
                    .formatted(Turn.degrees(Math.round(t.degrees() * 100) / 100.0).words()));
  }

  public String of(Point3 p) {
    Optional<Wall> within = wall(p, SLACK);
    if (within.isPresent()) {
      return inWall(within.get(), p);
    }
    boolean inRooms = placed.rooms().stream().anyMatch(r -> r.outline().contains(p.plan()));
    Optional<Wall> near = inRooms ? Optional.empty() : wall(p, BETWEEN);
    return near.map(w -> inWall(w, p)).orElseGet(() -> inRoom(p));
  }

  /** The wall that holds a point, or is at most so far under or over it. */
  Optional<Wall> wall(Point3 p, long slack) {
    return placed.walls().stream()
        .filter(w -> holds(w, p, slack))
        .min(Comparator.comparing(Wall::id));
  }

  private static boolean holds(Wall w, Point3 p, long slack) {
    Point3 l = w.frame().toLocal(p);
    return l.x() >= 0
        && l.x() <= w.length()
        && l.y() >= -SLACK
        && l.y() <= w.thickness() + SLACK
        && l.z() >= -slack
        && l.z() <= w.height() + slack;
  }

  private String inWall(Wall w, Point3 p) {
    Point3 l = w.frame().toLocal(p);
    return "%s level, %s, %s, %s"
        .formatted(w.level(), WallNames.at(w, l.x()), along(w, l.x()), height(w, l));
  }

  /** From where the wall begins in a room that sees the place: its far end may lie in another. */
  private String along(Wall w, long s) {
    Optional<Wall.WallFace> face = w.findFace(0, s).or(() -> w.findFace(1, s));
    String end = " from its " + end(w) + " end";
    return face.map(f -> units.tape(s - f.s().lo()) + end + " in the " + f.room())
        .orElse(units.tape(s) + end);
  }

  /** The end that distances along a wall are taped from. */
  static String end(Wall w) {
    Point3 start = w.world(0, 0, 0);
    Point3 end = w.world(w.length(), 0, 0);
    boolean eastWest = Math.abs(end.x() - start.x()) >= Math.abs(end.y() - start.y());
    return eastWest ? "west" : "south";
  }

  private String height(Wall w, Point3 l) {
    if (l.z() >= w.height() - 2 * SLACK) {
      return "in its top";
    }
    if (l.z() <= SLACK) {
      return "in its foot";
    }
    Optional<Wall.WallFace> face = w.findFace(0, l.x()).or(() -> w.findFace(1, l.x()));
    return face.map(f -> units.tape(l.z() - f.floorZ()) + " above the floor of " + f.room())
        .orElse(units.tape(l.z()) + " above its foot");
  }

  /** On a room's floor or ceiling, from the nearer wall each way. */
  String inPlan(String room, Point3 p, boolean floor) {
    return placed.rooms().stream()
        .filter(r -> r.name().equals(room) && r.outline().contains(p.plan()))
        .findFirst()
        .map(r -> fromWalls(r, p, floor))
        .orElseGet(() -> of(p));
  }

  private String fromWalls(PlacedRoom r, Point3 p, boolean floor) {
    return "%s of the %s, %s".formatted(floor ? "floor" : "ceiling", r.name(), fromWalls(r, p));
  }

  private String fromWalls(PlacedRoom r, Point3 p) {
    return nearer(r.outline(), p, true, "west", "east")
        + " and "
        + nearer(r.outline(), p, false, "south", "north");
  }

  /** Along a line through the point: how far it is to the outline before it and behind it. */
  private String nearer(Polygon2 outline, Point3 p, boolean x, String low, String high) {
    long before = Long.MAX_VALUE;
    long behind = Long.MAX_VALUE;
    List<Point2> ring = outline.corners();
    for (int i = 0; i < ring.size(); i++) {
      Point2 a = ring.get(i);
      Point2 b = ring.get((i + 1) % ring.size());
      double a2 = x ? a.y() - p.y() : a.x() - p.x();
      double b2 = x ? b.y() - p.y() : b.x() - p.x();
      if (a2 * b2 < 0 || a2 == 0 && b2 != 0) {
        double t = a2 / (a2 - b2);
        double at = x ? a.x() + t * (b.x() - a.x()) : a.y() + t * (b.y() - a.y());
        long far = Math.round(at - (x ? p.x() : p.y()));
        before = far <= 0 ? Math.min(before, -far) : before;
        behind = far >= 0 ? Math.min(behind, far) : behind;
      }
    }
    return before <= behind
        ? units.tape(before) + " from the " + low + " wall"
        : units.tape(behind) + " from the " + high + " wall";
  }

  private String outside(Point3 p) {
    return PlacedPorch.of(placed).stream()
        .filter(
            h -> {
              Point3 at = h.frame().toLocal(p);
              return at.x() >= 0 && at.x() <= h.length() && at.y() >= 0 && at.y() <= h.out();
            })
        .findFirst()
        .map(h -> "under the roof of porch " + h.porch().name())
        .orElse("outside the rooms");
  }

  private String inRoom(Point3 p) {
    Point2 plan = p.plan();
    List<PlacedRoom> here =
        placed.rooms().stream().filter(r -> r.outline().contains(plan)).toList();
    Optional<PlacedRoom> within =
        here.stream().filter(r -> r.floorZ() < p.z() && p.z() < r.ceilingZ()).findFirst();
    if (within.isPresent()) {
      PlacedRoom r = within.get();
      return "in " + r.name() + ", " + units.tape(p.z() - r.floorZ()) + " above the floor";
    }
    Optional<PlacedRoom> below =
        here.stream()
            .filter(r -> r.ceilingZ() <= p.z())
            .max(Comparator.comparingLong(PlacedRoom::ceilingZ));
    if (below.isPresent()) {
      return "above the ceiling of " + below.get().name() + ", " + fromWalls(below.get(), p);
    }
    return here.stream()
        .min(Comparator.comparingLong(PlacedRoom::floorZ))
        .map(r -> "under the floor of " + r.name() + ", " + fromWalls(r, p))
        .orElseGet(() -> outside(p));
  }
}
