package holloway.survey;

import holloway.geometry.Interval;
import holloway.geometry.Point2;
import holloway.geometry.SiteFrame;
import holloway.geometry.Turn;
import holloway.house.Along;
import holloway.house.Assumption;
import holloway.house.FaceRef;
import holloway.house.House;
import holloway.house.Lining;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * The house in the world. Levels bottom up; rooms and walls by name. Findings of the survey travel
 * beside it in an Outcome.
 */
public record Placed(
    House house,
    List<PlacedLevel> levels,
    List<PlacedRoom> rooms,
    List<Wall> walls,
    List<Misclosure> misclosures,
    List<Unaccounted> unaccounted,
    List<String> assumed,
    List<SharedOut> shared) {
  /** Of a house whose loops close exactly. */
  public Placed(
      House house,
      List<PlacedLevel> levels,
      List<PlacedRoom> rooms,
      List<Wall> walls,
      List<Misclosure> misclosures,
      List<Unaccounted> unaccounted,
      List<String> assumed) {
    this(house, levels, rooms, walls, misclosures, unaccounted, assumed, List.of());
  }

  /** Space that nothing accounts for, through the levels it passes. */
  public List<UnaccountedSpace> spaces() {
    return new SpaceStacks(this).list();
  }

  /**
   * Where the house's own frame lies in the site's, whose origin is the south-west corner of the
   * box around all rooms there too, to 0.1 mm.
   */
  public SiteFrame site() {
    Turn turn = house.turned();
    if (turn.isNone()) {
      return SiteFrame.OWN;
    }
    long west = Long.MAX_VALUE;
    long south = Long.MAX_VALUE;
    for (PlacedRoom r : rooms) {
      for (Point2 corner : r.outline().corners()) {
        Point2 p = turn.of(corner);
        west = Math.min(west, p.x());
        south = Math.min(south, p.y());
      }
    }
    return new SiteFrame(turn, -tenths(west), -tenths(south));
  }

  private static long tenths(long nm) {
    return Math.floorDiv(nm, 100_000) * 100_000;
  }

  /** The defaults of place and era that this house was placed with. */
  public List<Assumption> defaults() {
    return UsedDefaults.of(house, walls);
  }

  public Placed {
    levels = List.copyOf(levels);
    rooms = List.copyOf(rooms);
    walls = List.copyOf(walls);
    misclosures = List.copyOf(misclosures);
    unaccounted = List.copyOf(unaccounted);
    assumed = List.copyOf(assumed);
    shared = List.copyOf(shared);
  }

  /**
   * The levels over one another at a spot, bottom up: all of them, or those of the nearest part of
   * a split-level house.
   */
  public List<PlacedLevel> levelsAt(Point2 spot) {
    Geometry at = new GeometryFactory().createPoint(new Coordinate(spot.x() / 1e6, spot.y() / 1e6));
    boolean one = levels.stream().allMatch(l -> l.part() == levels.get(0).part());
    return one
        ? levels
        : rooms.stream()
            .min(
                Comparator.comparingDouble((PlacedRoom r) -> r.outline().toJts().distance(at))
                    .thenComparing(PlacedRoom::name))
            .map(r -> getLevel(r.room().level()).part())
            .map(part -> levels.stream().filter(l -> l.part() == part).toList())
            .orElse(levels);
  }

  public PlacedLevel getLevel(String name) {
    return levels.stream()
        .filter(l -> l.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no level " + name));
  }

  /** The stated stairs that have a level over them, by name. */
  public List<PlacedStair> stairs() {
    return house.stairs().stream().flatMap(s -> PlacedStair.of(this, s).stream()).toList();
  }

  /**
   * What lies on a wall at a place along it. A wall may pass several rooms, each with a finish of
   * its own; layers that are stated are those of the whole wall.
   */
  public Lining lining(Wall w, int side, long s) {
    Optional<Wall.WallFace> face =
        w.findLayers(side).isPresent() ? Optional.empty() : w.findFace(side, s);
    return face.map(f -> getRoom(f.room()).room().walls()).orElse(w.lining(side));
  }

  public PlacedRoom getRoom(String name) {
    return rooms.stream()
        .filter(r -> r.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no room " + name));
  }

  public Wall getWall(String id) {
    return walls.stream()
        .filter(w -> w.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no wall " + id));
  }

  /**
   * The visible segments of one side of a room, from west or south, as (start, end) in the world.
   */
  public List<Segment> listFaces(String room, holloway.house.Side side) {
    return Faces.of(getRoom(room).outline(), side);
  }

  /** A visible segment of a room's outline, start at its west or south end. */
  public record Segment(Point2 start, Point2 end) {}

  /**
   * The wall behind a spot on a face.
   *
   * @param heightAboveFloor above the room's finished floor, nanometres
   * @return empty when no wall stands there (off the face's end, or rooms meet without a wall)
   */
  public Optional<OnWall> findSpot(FaceRef face, Along along, long heightAboveFloor) {
    List<Segment> faces = listFaces(face.room(), face.side());
    if (face.ordinal() > faces.size()) {
      return Optional.empty();
    }
    Segment f = faces.get(face.ordinal() - 1);
    PlacedRoom room = getRoom(face.room());
    for (Wall w : walls) {
      for (Wall.WallFace wf : w.faces()) {
        if (wf.room().equals(face.room())
            && wf.roomSide() == face.side()
            && wf.ordinal() == face.ordinal()) {
          long a = w.frame().toLocal(f.start().at(0)).x();
          long b = w.frame().toLocal(f.end().at(0)).x();
          Interval whole = new Interval(Math.min(a, b), Math.max(a, b));
          boolean fromStart =
              along.from() == holloway.house.Side.WEST || along.from() == holloway.house.Side.SOUTH;
          long s =
              fromStart == a <= b
                  ? whole.lo() + along.distance().value().nm()
                  : whole.hi() - along.distance().value().nm();
          if (wf.s().contains(s)) {
            return Optional.of(
                new OnWall(
                    w, wf.side(), s, room.floorZ() + heightAboveFloor - w.frame().origin().z()));
          }
        }
      }
    }
    return Optional.empty();
  }
}
