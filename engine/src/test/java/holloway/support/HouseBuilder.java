package holloway.support;

import holloway.house.Chase;
import holloway.house.Direction;
import holloway.house.Fact;
import holloway.house.FloorSpec;
import holloway.house.Found;
import holloway.house.House;
import holloway.house.Level;
import holloway.house.Obstacle;
import holloway.house.Opening;
import holloway.house.Roof;
import holloway.house.Room;
import holloway.house.Room.Placing;
import holloway.house.RulePlace;
import holloway.house.Side;
import holloway.house.Tape;
import holloway.house.Thing;
import holloway.house.Timber;
import holloway.house.WallSpec;
import holloway.house.Where;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.UnaryOperator;

/**
 * Builds invented houses for tests: slab or joisted levels, rooms placed by each other, everything
 * else at its default. Every statement gets a line of its own in a file called {@code test.yaml}.
 */
public final class HouseBuilder {
  private final List<Level> levels = new ArrayList<>();
  private final List<RoomDraft> rooms = new ArrayList<>();
  private final List<WallSpec> walls = new ArrayList<>();
  private final List<Opening> openings = new ArrayList<>();
  private final List<Roof> roofs = new ArrayList<>();
  private final List<Chase> chases = new ArrayList<>();
  private final List<Obstacle> obstacles = new ArrayList<>();
  private final List<Thing> things = new ArrayList<>();
  private final List<Tape> tapes = new ArrayList<>();
  private final List<Found> found = new ArrayList<>();
  private WallSpec outer = WallDraft.usual().build();
  private WallSpec inner = WallDraft.usual().build();
  private RulePlace place = RulePlace.US;
  private int built = 1994;
  private boolean balloon;
  private int line;

  public static HouseBuilder house() {
    return new HouseBuilder();
  }

  public static Length ft(long feet, long inches) {
    return Length.inches(12 * feet + inches);
  }

  public static Length ft(long feet) {
    return Length.feet(feet);
  }

  public static Length in(long n) {
    return Length.inches(n);
  }

  public static Length in(long n, int d) {
    return Length.inches(n, d);
  }

  public Where where() {
    return new Where("test.yaml", ++line, 1);
  }

  public Fact<Length> taped(Length length) {
    return Fact.measured(length, where());
  }

  public HouseBuilder place(RulePlace p) {
    place = p;
    return this;
  }

  public HouseBuilder built(int year) {
    built = year;
    return this;
  }

  public HouseBuilder balloon() {
    balloon = true;
    return this;
  }

  public HouseBuilder outerWalls(WallDraft draft) {
    outer = draft.build();
    return this;
  }

  public HouseBuilder innerWalls(WallDraft draft) {
    inner = draft.build();
    return this;
  }

  /** A level on a slab. */
  public HouseBuilder slab(String name, Length ceilingHeight) {
    return level(name, Floors.slab(where()), ceilingHeight, Optional.empty(), Optional.empty());
  }

  /** A level on joists of a stated section at 16 in. */
  public HouseBuilder joists(
      String name, Timber section, Direction run, Length ceilingHeight, String above) {
    return level(
        name, joistFloor(section, run), ceilingHeight, Optional.of(above), Optional.empty());
  }

  public FloorSpec joistFloor(Timber section, Direction run) {
    return Floors.joists(section, run, where());
  }

  public HouseBuilder level(
      String name,
      FloorSpec floor,
      Length ceilingHeight,
      Optional<String> above,
      Optional<Length> rise) {
    levels.add(new Level(name, floor, taped(ceilingHeight), above, rise.map(this::taped), where()));
    return this;
  }

  /** The first room: nothing places it. */
  public HouseBuilder first(String name, String level, Length eastWest, Length northSouth) {
    return room(name, level, eastWest, northSouth, new Placing.Free());
  }

  /** A room on the given side of its neighbour, faces of the align side in line. */
  public HouseBuilder beside(
      String name, Length eastWest, Length northSouth, Side side, String neighbour, Side align) {
    return beside(name, eastWest, northSouth, side, neighbour, align, Length.ZERO);
  }

  public HouseBuilder beside(
      String name,
      Length eastWest,
      Length northSouth,
      Side side,
      String neighbour,
      Side align,
      Length shift) {
    return room(
        name, levelOf(neighbour), eastWest, northSouth, besideOf(side, neighbour, align, shift));
  }

  public Placing besideOf(Side side, String neighbour, Side align, Length shift) {
    Fact<Length> by = shift.nm() == 0 ? Fact.stated(shift, where()) : taped(shift);
    return new Placing.Beside(neighbour, side, align, by, where());
  }

  /** A room over another one; the tie is assumed. */
  public HouseBuilder above(
      String name,
      String level,
      Length eastWest,
      Length northSouth,
      String neighbour,
      Side alignNorthSouth,
      Side alignEastWest) {
    Fact<Length> none = Fact.assumed(Length.ZERO);
    return room(
        name,
        level,
        eastWest,
        northSouth,
        new Placing.Stacked(neighbour, true, alignNorthSouth, alignEastWest, none, none, where()));
  }

  public HouseBuilder room(
      String name, String level, Length eastWest, Length northSouth, Placing placing) {
    rooms.add(RoomDraft.sized(name, level, taped(eastWest), taped(northSouth), placing, where()));
    return this;
  }

  /** A room of any outline; corners as x, y pairs in inches. */
  public HouseBuilder outline(String name, String level, Placing placing, long... inches) {
    List<Room.Corner> corners = new ArrayList<>();
    for (int i = 0; i < inches.length; i += 2) {
      corners.add(
          new Room.Corner(taped(Length.inches(inches[i])), taped(Length.inches(inches[i + 1]))));
    }
    rooms.add(RoomDraft.outlined(name, level, corners, placing, where()));
    return this;
  }

  /** Changes the room named, for example {@code with("garage", RoomDraft::garage)}. */
  public HouseBuilder with(String room, UnaryOperator<RoomDraft> change) {
    rooms.replaceAll(r -> r.name().equals(room) ? change.apply(r) : r);
    return this;
  }

  public HouseBuilder wall(WallDraft draft) {
    walls.add(draft.at(where()).build());
    return this;
  }

  public HouseBuilder opening(Opening opening) {
    openings.add(opening);
    return this;
  }

  public HouseBuilder roof(Roof roof) {
    roofs.add(roof);
    return this;
  }

  public HouseBuilder chase(Chase chase) {
    chases.add(chase);
    return this;
  }

  public HouseBuilder obstacle(Obstacle obstacle) {
    obstacles.add(obstacle);
    return this;
  }

  public HouseBuilder thing(Thing thing) {
    things.add(thing);
    return this;
  }

  public HouseBuilder tape(Tape tape) {
    tapes.add(tape);
    return this;
  }

  public HouseBuilder found(Found what) {
    found.add(what);
    return this;
  }

  private String levelOf(String room) {
    return rooms.stream()
        .filter(r -> r.name().equals(room))
        .findFirst()
        .map(RoomDraft::level)
        .orElse(levels.get(0).name());
  }

  public House build() {
    return house(
        levels.stream().sorted(Comparator.comparing(Level::name)).toList(),
        rooms.stream().map(RoomDraft::build).sorted(Comparator.comparing(Room::name)).toList(),
        walls,
        tapes);
  }

  /** The same house with its lists in another order. */
  public House shuffled(long seed) {
    Random random = new Random(seed);
    return house(
        mixed(levels, random),
        mixed(rooms.stream().map(RoomDraft::build).toList(), random),
        mixed(walls, random),
        mixed(tapes, random));
  }

  private static <T> List<T> mixed(List<T> list, Random random) {
    List<T> copy = new ArrayList<>(list);
    Collections.shuffle(copy, random);
    return copy;
  }

  private House house(List<Level> l, List<Room> r, List<WallSpec> w, List<Tape> t) {
    return new House(
        "Test house (invented)",
        place,
        Fact.stated(built, Where.NOWHERE),
        balloon,
        outer,
        inner,
        l,
        r,
        w,
        openings,
        roofs,
        chases,
        obstacles,
        List.of(),
        things,
        t,
        found,
        List.of());
  }
}
