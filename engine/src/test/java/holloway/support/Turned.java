package holloway.support;

import holloway.house.Along;
import holloway.house.CeilingSpot;
import holloway.house.Chase;
import holloway.house.Conduit;
import holloway.house.Direction;
import holloway.house.FaceRef;
import holloway.house.Fact;
import holloway.house.FloorSpec;
import holloway.house.House;
import holloway.house.Level;
import holloway.house.Obstacle;
import holloway.house.Opening;
import holloway.house.Roof;
import holloway.house.Room;
import holloway.house.Room.Placing;
import holloway.house.Side;
import holloway.house.Skirting;
import holloway.house.Soffit;
import holloway.house.Tape;
import holloway.house.Thing;
import holloway.house.WallRef;
import holloway.house.WallSpec;
import holloway.house.WallSpot;
import holloway.request.Request;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * A house seen in a mirror, or turned by quarters: two mirrors make a turn. What was found, and
 * rooms with outlines in an upright mirror, are not carried over.
 */
public enum Turned {
  /** The mirror lies south-west to north-east: east becomes north. */
  DIAGONALLY(Side.EAST, Side.NORTH, Side.WEST, Side.SOUTH),
  /** The mirror stands north-south: east becomes west. */
  EAST_FOR_WEST(Side.NORTH, Side.WEST, Side.SOUTH, Side.EAST),
  /** The mirror stands east-west: north becomes south. */
  NORTH_FOR_SOUTH(Side.SOUTH, Side.EAST, Side.NORTH, Side.WEST);

  private final Side[] becomes;

  /** What north, east, south and west become. */
  Turned(Side... becomes) {
    this.becomes = becomes;
  }

  private Side of(Side s) {
    return becomes[s.ordinal()];
  }

  private boolean swaps() {
    return this == DIAGONALLY;
  }

  private Along of(Along a) {
    return new Along(of(a.from()), a.distance());
  }

  private FaceRef of(FaceRef f) {
    if (f.ordinal() > 1 && !swaps()) {
      throw new IllegalArgumentException("a numbered face in an upright mirror: " + f);
    }
    return new FaceRef(f.room(), of(f.side()), f.ordinal(), f.where());
  }

  WallSpot of(WallSpot s) {
    return new WallSpot(of(s.face()), of(s.along()), s.height());
  }

  CeilingSpot of(CeilingSpot s) {
    Along a = of(s.eastWest());
    Along b = of(s.northSouth());
    return new CeilingSpot(s.room(), swaps() ? b : a, swaps() ? a : b, s.where());
  }

  private WallRef of(WallRef r) {
    return new WallRef(r.between(), r.face().map(this::of), r.where());
  }

  private Direction of(Direction d) {
    return swaps() ? d.across() : d;
  }

  /** A signed distance northward or eastward. */
  private Fact<Length> towards(Fact<Length> f, boolean eastWest) {
    boolean turned = !swaps() && (this == EAST_FOR_WEST) == eastWest;
    Length v = turned ? new Length(-f.value().nm()) : f.value();
    return new Fact<>(v, f.spread(), f.origin(), f.where());
  }

  public House of(House h) {
    return new House(
        h.name(),
        h.place(),
        h.built(),
        h.balloon(),
        of(h.outerWalls()),
        of(h.innerWalls()),
        h.levels().stream().map(this::of).toList(),
        h.rooms().stream().map(this::of).toList(),
        h.walls().stream().map(this::of).toList(),
        h.openings().stream().map(this::of).toList(),
        h.roofs().stream().map(this::of).toList(),
        h.chases().stream().map(this::of).toList(),
        h.obstacles().stream().map(this::of).toList(),
        h.conduits().stream().map(this::of).toList(),
        h.soffits().stream().map(this::of).toList(),
        h.skirtings().stream().map(this::of).toList(),
        h.things().stream().map(this::of).toList(),
        h.tapes().stream().map(this::of).toList(),
        List.of(),
        h.inputs());
  }

  private WallSpec of(WallSpec s) {
    return new WallSpec(
        s.ref().map(this::of),
        s.name(),
        s.kind(),
        s.studs(),
        s.every(),
        s.studsFrom().map(this::of),
        s.thickness(),
        s.bearing(),
        s.fill(),
        s.garageSeparation(),
        s.balloon(),
        s.singleTopPlate(),
        s.blocksAt(),
        s.where());
  }

  private Level of(Level l) {
    return new Level(l.name(), of(l.floor()), l.ceilingHeight(), l.above(), l.rise(), l.where());
  }

  private FloorSpec of(FloorSpec f) {
    if (f.origin().isPresent() && !swaps()) {
      throw new IllegalArgumentException("joists are only counted from the south or west");
    }
    return new FloorSpec(
        f.kind(),
        f.joists(),
        f.every(),
        of(f.run()),
        f.origin(),
        f.crawlspace().map(this::of),
        f.boards(),
        f.fill(),
        f.blocksAt(),
        f.clearOverWalls(),
        f.where());
  }

  private FloorSpec.Crawlspace of(FloorSpec.Crawlspace c) {
    return new FloorSpec.Crawlspace(
        c.clearance(),
        c.access()
            .map(
                a -> {
                  boolean swap = swaps() && a.floorHatch().isPresent();
                  return new FloorSpec.WayIn(
                      a.floorHatch().map(this::of),
                      a.outsideDoor().map(this::of),
                      swap ? a.height() : a.width(),
                      swap ? a.width() : a.height(),
                      a.where());
                }),
        c.where());
  }

  private Room of(Room r) {
    List<Room.Corner> outline = new ArrayList<>();
    for (Room.Corner c : r.outline()) {
      if (!swaps()) {
        throw new IllegalArgumentException("an outline in an upright mirror: " + r.name());
      }
      outline.add(new Room.Corner(c.y(), c.x()));
    }
    return new Room(
        r.name(),
        r.level(),
        r.size().map(s -> swaps() ? new Room.Size(s.northSouth(), s.eastWest()) : s),
        outline,
        of(r.placing()),
        r.floor().map(this::of),
        r.elevation(),
        r.ceilingHeight(),
        r.walls(),
        r.ceiling(),
        r.plain(),
        r.garage(),
        r.where());
  }

  private Placing of(Placing p) {
    if (p instanceof Placing.At at) {
      if (!swaps()) {
        throw new IllegalArgumentException("a corner's place in an upright mirror");
      }
      return new Placing.At(at.y(), at.x(), at.where());
    } else if (p instanceof Placing.Beside b) {
      Fact<Length> shift = towards(b.shift(), b.side().runsEastWest());
      return new Placing.Beside(b.neighbour(), of(b.side()), of(b.align()), shift, b.where());
    } else if (p instanceof Placing.Stacked s) {
      Side ns = of(s.alignNorthSouth());
      Side ew = of(s.alignEastWest());
      Fact<Length> east = towards(s.shiftEast(), true);
      Fact<Length> north = towards(s.shiftNorth(), false);
      return swaps()
          ? new Placing.Stacked(s.neighbour(), s.above(), ew, ns, north, east, s.where())
          : new Placing.Stacked(s.neighbour(), s.above(), ns, ew, east, north, s.where());
    }
    return p;
  }

  private Opening of(Opening o) {
    Along along = of(o.along());
    return new Opening(o.kind(), of(o.wall()), along, o.width(), o.sill(), o.head(), o.where());
  }

  private Roof of(Roof r) {
    return new Roof(
        r.name(),
        r.level(),
        r.rooms(),
        r.shape(),
        of(r.ridge()),
        r.lowSide().map(this::of),
        r.pitchRise(),
        r.pitchRun(),
        r.eaves(),
        r.frame(),
        r.chord(),
        r.every(),
        r.heel(),
        r.insulation(),
        r.fill(),
        r.boarded(),
        r.hatches().stream().map(this::of).toList(),
        joins(r),
        r.where());
  }

  private static List<Roof.Join> joins(Roof r) {
    if (r.joins().isEmpty()) {
      return List.of();
    }
    throw new IllegalArgumentException("openings between attics are not turned");
  }

  private Roof.Hatch of(Roof.Hatch h) {
    return swaps()
        ? new Roof.Hatch(of(h.at()), h.northSouth(), h.eastWest())
        : new Roof.Hatch(of(h.at()), h.eastWest(), h.northSouth());
  }

  private Chase of(Chase c) {
    return new Chase(
        c.name(),
        of(c.beside()),
        c.along().map(this::of),
        c.inside(),
        c.from(),
        c.to(),
        c.alongFace(),
        c.awayFromFace(),
        c.contents(),
        c.floors(),
        c.known(),
        c.where());
  }

  private Obstacle of(Obstacle o) {
    return new Obstacle(
        o.kind(),
        o.inWall()
            .map(
                w ->
                    new Obstacle.InWall(
                        of(w.face()), of(w.along()), w.width(), w.bottom(), w.top())),
        o.inVoid()
            .map(
                v ->
                    new Obstacle.InVoid(
                        of(v.at()),
                        v.above(),
                        swaps() ? v.northSouth() : v.eastWest(),
                        swaps() ? v.eastWest() : v.northSouth(),
                        v.height())),
        o.where());
  }

  private Conduit of(Conduit c) {
    return new Conduit(
        c.name(),
        of(c.from()),
        of(c.to()),
        c.insideDiameter(),
        c.bends(),
        c.length(),
        c.kind(),
        c.where());
  }

  private Soffit of(Soffit s) {
    return new Soffit(
        s.name(),
        s.room(),
        s.face().map(this::of),
        s.along().map(this::of),
        s.length(),
        s.out(),
        s.drop(),
        s.cover(),
        s.where());
  }

  private Skirting of(Skirting s) {
    List<Side> sides = s.sides().stream().map(this::of).sorted().toList();
    return new Skirting(s.room(), sides, s.height(), s.where());
  }

  private Thing of(Thing t) {
    return new Thing(t.kind(), of(t.at()), t.width(), t.top(), t.where());
  }

  /** A tape runs eastward or northward. */
  private Tape of(Tape t) {
    boolean back = !swaps() && (this == EAST_FOR_WEST) != t.from().side().runsEastWest();
    return back
        ? new Tape(of(t.to()), of(t.from()), t.distance(), t.where())
        : new Tape(of(t.from()), of(t.to()), t.distance(), t.where());
  }

  /** What is wanted, at the same places of the turned house. */
  public Request of(Request r) {
    return new TurnedWants(this).of(r);
  }
}
