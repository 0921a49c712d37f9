package holloway.support;

import holloway.house.Direction;
import holloway.house.Fact;
import holloway.house.FloorSpec;
import holloway.house.Room;
import holloway.house.Room.Placing;
import holloway.house.Side;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.List;

/** Rooms and floors as they look in a mirror. */
final class TurnedRooms {
  private final Mirror mirror;

  TurnedRooms(Mirror mirror) {
    this.mirror = mirror;
  }

  FloorSpec of(FloorSpec f) {
    boolean back = mirror.way().turnsBack(f.run() == Direction.NORTH_SOUTH);
    boolean rowsBack = mirror.way().turnsBack(f.run() == Direction.EAST_WEST);
    return new FloorSpec(
        f.kind(),
        f.joists(),
        f.every(),
        mirror.of(f.run()),
        f.origin().map(o -> back ? Mirror.negated(o) : o),
        f.crawlspace().map(this::of),
        f.boards(),
        f.fill(),
        f.blocksAt().stream().map(b -> rowsBack ? Mirror.negated(b) : b).toList(),
        f.clearOverWalls(),
        f.where());
  }

  private FloorSpec.Crawlspace of(FloorSpec.Crawlspace c) {
    return new FloorSpec.Crawlspace(
        c.clearance(),
        c.access()
            .map(
                a -> {
                  boolean swap = mirror.swaps() && a.floorHatch().isPresent();
                  return new FloorSpec.WayIn(
                      a.floorHatch().map(mirror::of),
                      a.outsideDoor().map(mirror::of),
                      swap ? a.height() : a.width(),
                      swap ? a.width() : a.height(),
                      a.where());
                }),
        c.where());
  }

  Room of(Room r) {
    return new Room(
        r.name(),
        r.level(),
        r.size().map(mirror::of),
        outline(r.outline()),
        of(r.placing()),
        r.floor().map(this::of),
        r.elevation(),
        r.ceilingHeight(),
        r.walls(),
        r.ceiling(),
        r.overhead(),
        r.plain(),
        r.garage(),
        r.vaulted(),
        r.standing(),
        r.where());
  }

  private List<Room.Corner> outline(List<Room.Corner> corners) {
    long east = corners.stream().mapToLong(c -> c.x().value().nm()).max().orElse(0);
    long north = corners.stream().mapToLong(c -> c.y().value().nm()).max().orElse(0);
    List<Room.Corner> out = new ArrayList<>();
    for (Room.Corner c : corners) {
      out.add(
          mirror.swaps()
              ? new Room.Corner(c.y(), c.x())
              : new Room.Corner(back(c.x(), east, true), back(c.y(), north, false)));
    }
    return out;
  }

  private Fact<Length> back(Fact<Length> f, long end, boolean eastWest) {
    return mirror.way().turnsBack(eastWest)
        ? new Fact<>(new Length(end - f.value().nm()), f.spread(), f.origin(), f.where())
        : f;
  }

  private Placing of(Placing p) {
    if (p instanceof Placing.At at) {
      if (!mirror.swaps()) {
        throw new IllegalArgumentException("a corner's place in an upright mirror");
      }
      return new Placing.At(at.y(), at.x(), at.where());
    } else if (p instanceof Placing.Beside b) {
      Fact<Length> shift = mirror.towards(b.shift(), b.side().runsEastWest());
      return new Placing.Beside(
          b.neighbour(), mirror.of(b.side()), mirror.of(b.align()), shift, b.where());
    } else if (p instanceof Placing.Stacked s) {
      Side ns = mirror.of(s.alignNorthSouth());
      Side ew = mirror.of(s.alignEastWest());
      Fact<Length> east = mirror.towards(s.shiftEast(), true);
      Fact<Length> north = mirror.towards(s.shiftNorth(), false);
      return mirror.swaps()
          ? new Placing.Stacked(s.neighbour(), s.above(), ew, ns, north, east, s.where())
          : new Placing.Stacked(s.neighbour(), s.above(), ns, ew, east, north, s.where());
    }
    return p;
  }
}
