package holloway.pipeline;

import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.finding.Severity;
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
import holloway.plan.Plan;
import holloway.request.Effort;
import holloway.request.Outlet;
import holloway.request.Request;
import holloway.request.Run;
import holloway.request.Spot;
import holloway.request.Wishes;
import holloway.schedule.HoleCard;
import holloway.survey.Misclosure;
import holloway.survey.Placed;
import holloway.survey.PlacedLevel;
import holloway.survey.PlacedRoom;
import holloway.survey.Unaccounted;
import holloway.survey.Wall;
import holloway.units.Length;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * An invented toy: a garage of 4 x 4 m, an office of 3 x 4 m east of it, one 2x4 wall between, and
 * a hand-made plan of three runs with two holes.
 */
public final class Toy {
  static final long MM = Length.NM_PER_MM;

  private Toy() {}

  public static House house(RulePlace place, int built) {
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

  private static WallSpot spot(String room, Side side) {
    return new WallSpot(
        new FaceRef(room, side, 1, Where.NOWHERE),
        new Along(Side.SOUTH, Fact.measured(Length.mm(1200), Where.NOWHERE)),
        Fact.measured(Length.mm(400), Where.NOWHERE));
  }

  public static Placed placed() {
    return placed(house(RulePlace.US, 1962));
  }

  public static Placed placed(House house) {
    List<PlacedRoom> rooms =
        List.of(
            new PlacedRoom(
                house.getRoom("garage"),
                Polygon2.rectangle(0, 0, 4000 * MM, 4000 * MM),
                0,
                2400 * MM),
            new PlacedRoom(
                house.getRoom("office"),
                Polygon2.rectangle(4114 * MM, 0, 7114 * MM, 4000 * MM),
                0,
                2400 * MM));
    PlacedLevel ground =
        new PlacedLevel(
            house.getLevel("ground"),
            0,
            0,
            2400 * MM,
            List.of(Polygon2.rectangle(-100 * MM, -100 * MM, 7214 * MM, 4100 * MM)));
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
                Polygon2.rectangle(0, 0, 250 * MM, 600 * MM),
                0.15,
                "a chase or boxed-in pipe")),
        List.of("garage-office: stud spacing 16 in"));
  }

  private static Wall wall() {
    Interval all = new Interval(0, 4000 * MM);
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
        Frame.northSouth(new Point3(4114 * MM, 0, 0)),
        4000 * MM,
        114 * MM,
        new Interval(13 * MM, 102 * MM),
        2400 * MM,
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
            new Wall.WallFace("office", Side.WEST, 1, 0, all, 0, 2400 * MM),
            new Wall.WallFace("garage", Side.EAST, 1, 1, all, 0, 2400 * MM)),
        List.of(
            new Wall.WallOpening(
                door, new Interval(2985 * MM, 3828 * MM), new Interval(0, 2050 * MM))),
        List.of(),
        Length.mm(5));
  }

  public static Request request() {
    return new Request(
        new Request.Cabinet(spot("garage", Side.EAST), Where.NOWHERE),
        List.of(
            new Outlet(
                "desk",
                List.of(new Spot.OnWall(spot("office", Side.WEST), Optional.empty())),
                List.of("cat6", "cat6", "om4"),
                0,
                false,
                "",
                Where.NOWHERE)),
        List.of(
            new Run("desk/cat6-1", "cabinet", "desk", "cat6", false, Optional.empty()),
            new Run("desk/cat6-2", "cabinet", "desk", "cat6", true, Optional.empty()),
            new Run("desk/om4-1", "cabinet", "desk", "om4", false, Optional.empty())),
        Wishes.NONE,
        new Effort(Map.of(), false));
  }

  static Point3 at(double x, double y, double z) {
    return new Point3(Math.round(x * MM), Math.round(y * MM), Math.round(z * MM));
  }

  /** As the solver hands it on: cut lengths not yet counted, no findings. */
  public static Plan bare() {
    return new Plan(
        1,
        "Toy Cottage",
        "least-work",
        10_000,
        List.of(),
        new Plan.Totals(
            1_000_000,
            990_000,
            0.01,
            100,
            2,
            0,
            30,
            30,
            0,
            Optional.empty(),
            "USD",
            List.of("attic")),
        List.of(run("desk/cat6-1", "cat6"), run("desk/cat6-2", "cat6"), run("desk/om4-1", "om4")),
        List.of(topPlate(), otherPlate()),
        List.of(),
        List.of(
            new Plan.PlannedWork("set up attic", "zone", 25, 0, 0, "attic"),
            new Plan.PlannedWork("bore garage-office/top-plate/1200", "bore", 14, 1, 0, ""),
            new Plan.PlannedWork("bore garage-office/top-plate/2000", "bore", 14, 1, 0, ""),
            new Plan.PlannedWork("cut out desk", "cut-out", 10, 0, 0, "")),
        List.of(),
        List.of(),
        new Plan.SurveyNotes(List.of(), List.of(), List.of()));
  }

  private static Plan.PlannedRun run(String id, String cable) {
    return new Plan.PlannedRun(
        id,
        "cabinet",
        "desk",
        cable,
        10,
        10,
        List.of(
            new Plan.PlanStep(
                "leg",
                "garage/surface",
                Optional.of("open room surface"),
                Optional.empty(),
                List.of(at(3990, 2000, 1400), at(3990, 2000, 2390)),
                0.99,
                Optional.of("hand"),
                Optional.empty(),
                Optional.of(4.25)),
            new Plan.PlanStep(
                "crossing",
                "garage-office/top-plate/1200",
                Optional.empty(),
                Optional.of("H1"),
                List.of(at(4057, 1200, 2324), at(4057, 1200, 2400)),
                0.076,
                Optional.empty(),
                Optional.empty(),
                Optional.empty()),
            new Plan.PlanStep(
                "leg",
                "garage-office/bay-3",
                Optional.of("stud bay"),
                Optional.empty(),
                List.of(at(4057, 1200, 2324), at(4057, 1200, 400)),
                8.934,
                Optional.of("blind"),
                Optional.of(1),
                Optional.of(6.5))));
  }

  private static Plan.PlannedHole topPlate() {
    return hole("garage-office/top-plate/1200", "H1", 22, 1200, true, List.of("through a patch"));
  }

  private static Plan.PlannedHole otherPlate() {
    return hole("garage-office/top-plate/2000", "H2", 32, 2000, false, List.of());
  }

  private static Plan.PlannedHole hole(
      String id, String label, int mm, double y, boolean assumed, List<String> others) {
    return new Plan.PlannedHole(
        id,
        label,
        "top plate",
        mm,
        76,
        at(4057, y, 2362),
        List.of("garage-office/bay-3", "attic"),
        "from the attic",
        "attic",
        List.of("set up attic", "bore " + id),
        14,
        List.of("desk/cat6-1", "desk/cat6-2", "desk/om4-1"),
        assumed,
        others,
        1,
        List.of(at(4057, y, 2324), at(4057, y, 2400)),
        List.of("top plate", "top plate"));
  }

  public static Finding law() {
    return new Finding(
        "garage-separation",
        Severity.LAW,
        Place.of("garage-office", at(4057, 1200, 2362)),
        "IRC R302.5.3",
        "The hole goes into the garage separation: seal it.",
        true);
  }

  public static Finding practice() {
    return new Finding(
        "label-ends",
        Severity.PRACTICE,
        Place.of("desk"),
        "common practice, no published source",
        "Label both ends.");
  }

  public static HoleCard card() {
    return new HoleCard(
        "garage-office/top-plate/1200",
        List.of("1.200 m from the south wall plate"),
        List.of("1.200 m from the south-west corner of office"),
        "square",
        "look for wires beside the plate");
  }
}
