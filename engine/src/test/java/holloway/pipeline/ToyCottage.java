package holloway.pipeline;

import holloway.geometry.Frame;
import holloway.geometry.Interval;
import holloway.geometry.Point3;
import holloway.geometry.Polygon2;
import holloway.house.Along;
import holloway.house.Direction;
import holloway.house.FaceRef;
import holloway.house.Fact;
import holloway.house.Fill;
import holloway.house.FloorSpec;
import holloway.house.House;
import holloway.house.Level;
import holloway.house.Lining;
import holloway.house.Opening;
import holloway.house.Room;
import holloway.house.RulePlace;
import holloway.house.Side;
import holloway.house.Thing;
import holloway.house.Timber;
import holloway.house.WallRef;
import holloway.house.WallSpec;
import holloway.house.WallSpot;
import holloway.house.Where;
import holloway.survey.Misclosure;
import holloway.survey.Placed;
import holloway.survey.PlacedLevel;
import holloway.survey.PlacedRoom;
import holloway.survey.Unaccounted;
import holloway.survey.Wall;
import holloway.units.Length;
import java.util.List;
import java.util.Optional;

/** The walls and rooms of the toy: a garage, an office east of it, one 2x4 wall between. */
final class ToyCottage {
  private ToyCottage() {}

  static House house(RulePlace place, int built) {
    return new House(
        "Toy Cottage",
        place,
        Fact.stated(built, Where.NOWHERE),
        false,
        spec(),
        spec(),
        List.of(level()),
        List.of(room("garage", 4000, true), room("office", 3000, false)),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(socket()),
        List.of(),
        List.of(),
        List.of(new House.InputFile("toy.yaml", "ab".repeat(32))));
  }

  private static WallSpec spec() {
    return new WallSpec(
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        Where.NOWHERE);
  }

  private static Level level() {
    FloorSpec slab =
        new FloorSpec(
            FloorSpec.Kind.SLAB,
            Optional.empty(),
            Fact.assumed(Length.inches(16)),
            Direction.EAST_WEST,
            Optional.empty(),
            Optional.empty(),
            false,
            Fill.EMPTY,
            Where.NOWHERE);
    return new Level(
        "ground",
        slab,
        Fact.measured(Length.mm(2400), Where.NOWHERE),
        Optional.empty(),
        Optional.empty(),
        Where.NOWHERE);
  }

  private static Room room(String name, long eastWest, boolean garage) {
    return new Room(
        name,
        "ground",
        Optional.of(
            new Room.Size(
                Fact.measured(Length.mm(eastWest), Where.NOWHERE),
                Fact.measured(Length.mm(4000), Where.NOWHERE))),
        List.of(),
        new Room.Placing.Free(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Lining.BOARD,
        Lining.BOARD,
        garage,
        garage,
        Where.NOWHERE);
  }

  private static Thing socket() {
    return new Thing(
        Thing.Kind.SOCKET, spot("office", Side.WEST), Length.mm(70), Length.mm(400), Where.NOWHERE);
  }

  static WallSpot spot(String room, Side side) {
    return new WallSpot(
        new FaceRef(room, side, 1, Where.NOWHERE),
        new Along(Side.SOUTH, Fact.measured(Length.mm(1200), Where.NOWHERE)),
        Fact.measured(Length.mm(400), Where.NOWHERE));
  }

  static Placed placed() {
    return placed(house(RulePlace.US, 1962));
  }

  static Placed placed(House house) {
    List<PlacedRoom> rooms =
        List.of(
            new PlacedRoom(
                house.getRoom("garage"),
                Polygon2.rectangle(0, 0, 4000 * Toy.MM, 4000 * Toy.MM),
                0,
                2400 * Toy.MM),
            new PlacedRoom(
                house.getRoom("office"),
                Polygon2.rectangle(4114 * Toy.MM, 0, 7114 * Toy.MM, 4000 * Toy.MM),
                0,
                2400 * Toy.MM));
    PlacedLevel ground =
        new PlacedLevel(
            house.getLevel("ground"),
            0,
            0,
            2400 * Toy.MM,
            List.of(
                Polygon2.rectangle(-100 * Toy.MM, -100 * Toy.MM, 7214 * Toy.MM, 4100 * Toy.MM)));
    return new Placed(
        house,
        List.of(ground),
        rooms,
        List.of(wall()),
        List.of(
            new Misclosure(
                "ground, east-west", Length.mm(41), Length.mm(12), List.of("garage size", "tape"))),
        List.of(
            new Unaccounted(
                "ground",
                Polygon2.rectangle(0, 0, 250 * Toy.MM, 600 * Toy.MM),
                0.15,
                "a chase or boxed-in pipe")),
        List.of("garage-office: stud spacing 16 in"));
  }

  private static Wall wall() {
    Interval all = new Interval(0, 4000 * Toy.MM);
    Opening door =
        new Opening(
            Opening.Kind.DOOR,
            new WallRef(Optional.empty(), Optional.empty(), Where.NOWHERE),
            new Along(Side.SOUTH, Fact.measured(Length.mm(3000), Where.NOWHERE)),
            Fact.measured(Length.mm(813), Where.NOWHERE),
            Fact.measured(Length.ZERO, Where.NOWHERE),
            Fact.measured(Length.mm(2032), Where.NOWHERE),
            Where.NOWHERE);
    return new Wall(
        "garage-office",
        "ground",
        WallSpec.Kind.FRAMED,
        Frame.northSouth(new Point3(4114 * Toy.MM, 0, 0)),
        4000 * Toy.MM,
        114 * Toy.MM,
        new Interval(13 * Toy.MM, 102 * Toy.MM),
        2400 * Toy.MM,
        -1,
        Fact.assumed(Timber.solid("2x4", Length.mm(38), Length.mm(89))),
        Fact.assumed(Length.inches(16)),
        Fact.assumed(0L),
        Fact.assumed(false),
        Fact.assumed(Fill.EMPTY),
        Lining.BOARD,
        Lining.BOARD,
        true,
        false,
        false,
        List.of(),
        List.of(
            new Wall.WallFace("office", Side.WEST, 1, 0, all, 0, 2400 * Toy.MM),
            new Wall.WallFace("garage", Side.EAST, 1, 1, all, 0, 2400 * Toy.MM)),
        List.of(
            new Wall.WallOpening(
                door, new Interval(2985 * Toy.MM, 3828 * Toy.MM), new Interval(0, 2050 * Toy.MM))),
        List.of(),
        Length.mm(5));
  }
}
