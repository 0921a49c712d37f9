package holloway.check;

import holloway.framing.Framed;
import holloway.framing.Member;
import holloway.framing.MemberKind;
import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Interval;
import holloway.geometry.Point3;
import holloway.geometry.Polygon2;
import holloway.hollow.Hollow;
import holloway.hollow.HollowHouse;
import holloway.hollow.HollowKind;
import holloway.hollow.Site;
import holloway.hollow.SiteKind;
import holloway.hollow.Stand;
import holloway.house.Fact;
import holloway.house.Fill;
import holloway.house.House;
import holloway.house.Lining;
import holloway.house.Room;
import holloway.house.RulePlace;
import holloway.house.Side;
import holloway.house.Timber;
import holloway.house.WallSpec;
import holloway.house.Where;
import holloway.survey.Placed;
import holloway.survey.PlacedRoom;
import holloway.survey.Wall;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One invented room, 4.0 m by 3.0 m, between a west and an east stud wall, under an attic. Studs
 * stand every 400 mm; walls are 2.4 m high with a double top plate; chords run east-west every 400
 * mm. Round numbers, so that lengths can be worked out by hand.
 */
public final class ToyHouse {
  public static final long MM = 1_000_000L;

  private boolean garage;
  private final List<Member> members = new ArrayList<>();
  private final List<Hollow> hollows = new ArrayList<>();
  private final List<Site> sites = new ArrayList<>();
  private final List<Wall> walls = new ArrayList<>();

  public static HollowHouse build() {
    return build(Fill.EMPTY);
  }

  static HollowHouse build(Fill fill) {
    return build(fill, false);
  }

  /** {@code garage}: the room is a garage and its east wall parts it from a house. */
  public static HollowHouse build(Fill fill, boolean garage) {
    ToyHouse toy = new ToyHouse();
    toy.garage = garage;
    toy.wall(
        "east",
        new Frame(at(4114, 0, 0), Frame.Axis.NORTH, Frame.Axis.WEST, Frame.Axis.UP),
        1,
        fill);
    toy.wall("west", Frame.northSouth(at(0, 0, 0)), 0, fill);
    toy.attic();
    List<Stand> stands =
        List.of(new Stand("attic", "the attic", "attic"), new Stand("shop", "the shop", ""));
    return new HollowHouse(
        new Framed(toy.placed(), toy.members, List.of(), List.of()),
        toy.hollows,
        toy.sites,
        stands,
        List.of());
  }

  public static Point3 at(double x, double y, double z) {
    return new Point3(Math.round(x * MM), Math.round(y * MM), Math.round(z * MM));
  }

  private static Box box(long x0, long x1, long y0, long y1, long z0, long z1) {
    return new Box(x0 * MM, x1 * MM, y0 * MM, y1 * MM, z0 * MM, z1 * MM);
  }

  private void member(String id, MemberKind kind, Frame frame, Box box, String owner) {
    members.add(new Member(id, kind, frame, box, owner, false));
  }

  /** {@code roomSide}: the side (0 at t = 0) that shows to the room; board 13 mm, core 88 mm. */
  private void wall(String id, Frame frame, int roomSide, Fill fill) {
    member(id + "/bottom", MemberKind.BOTTOM_PLATE, frame, box(0, 3000, 13, 101, 0, 38), id);
    member(id + "/top-1", MemberKind.TOP_PLATE, frame, box(0, 3000, 13, 101, 2324, 2362), id);
    member(id + "/top-2", MemberKind.TOP_PLATE, frame, box(0, 3000, 13, 101, 2362, 2400), id);
    member(id + "/board-0", MemberKind.LINING, frame, box(0, 3000, 0, 13, 0, 2387), id);
    member(id + "/board-1", MemberKind.LINING, frame, box(0, 3000, 101, 114, 0, 2387), id);
    for (long s = 400; s <= 2800; s += 400) {
      member(id + "/stud-" + s, MemberKind.STUD, frame, box(s - 19, s + 19, 13, 101, 38, 2324), id);
    }
    for (long s = 400; s < 2800; s += 400) {
      bay(id, frame, s, fill);
    }
    walls.add(survey(id, frame, roomSide));
  }

  private void bay(String id, Frame frame, long s, Fill fill) {
    Box clear = box(s + 19, s + 381, 13, 101, 38, 2324);
    String bay = id + "/bay-" + s;
    hollows.add(
        new Hollow(
            bay, HollowKind.STUD_BAY, frame, clear, Optional.empty(), fill, id, Optional.empty()));
    site(
        id + "/top/" + (s + 200),
        SiteKind.TOP_PLATE,
        frame.toWorld(local(s + 200, 57, 2324)),
        frame.toWorld(local(s + 200, 57, 2400)),
        bay,
        "attic",
        List.of(id + "/top-1", id + "/top-2"),
        List.of(new Site.Layer("top plate", 76 * MM)));
    if (s + 400 < 2800) {
      site(
          id + "/stud/" + (s + 400),
          SiteKind.STUD,
          frame.toWorld(local(s + 381, 57, 1000)),
          frame.toWorld(local(s + 419, 57, 1000)),
          bay,
          id + "/bay-" + (s + 400),
          List.of(id + "/stud-" + (s + 400)),
          List.of(new Site.Layer("stud", 38 * MM)));
    }
  }

  private static Point3 local(double s, double t, double z) {
    return at(s, t, z);
  }

  private void site(
      String id,
      SiteKind kind,
      Point3 a,
      Point3 b,
      String in,
      String out,
      List<String> pierces,
      List<Site.Layer> layers) {
    sites.add(new Site(id, kind, a, b, in, out, pierces, layers, 25, 32, false, false));
  }

  private void attic() {
    for (long y = 400; y <= 2800; y += 400) {
      member(
          "chord-" + y,
          MemberKind.CHORD,
          Frame.WORLD,
          box(-101, 4101, y - 19, y + 19, 2400, 2489),
          "roof");
    }
    hollows.add(
        new Hollow(
            "attic",
            HollowKind.ATTIC,
            Frame.WORLD,
            box(-101, 4101, 0, 3000, 2400, 3400),
            Optional.of(Polygon2.rectangle(-101 * MM, 0, 4101 * MM, 3000 * MM)),
            Fill.LOOSE,
            "roof",
            Optional.of("attic")));
  }

  private Wall survey(String id, Frame frame, int roomSide) {
    Side side = roomSide == 0 ? Side.WEST : Side.EAST;
    Wall.WallFace face =
        new Wall.WallFace("shop", side, 1, roomSide, new Interval(0, 3000 * MM), 0, 2387 * MM);
    Timber stud = Timber.solid("2x4", Length.mm(38), Length.mm(88));
    return new Wall(
        id,
        "ground",
        WallSpec.Kind.FRAMED,
        frame,
        3000 * MM,
        114 * MM,
        new Interval(13 * MM, 101 * MM),
        2400 * MM,
        1 - roomSide,
        Fact.assumed(stud),
        Fact.assumed(Length.mm(400)),
        Fact.assumed(400 * MM),
        Fact.assumed(true),
        Fact.assumed(Fill.EMPTY),
        Lining.BOARD,
        Lining.BOARD,
        garage && id.equals("east"),
        false,
        false,
        List.of(),
        List.of(face),
        List.of(),
        List.of(),
        Length.mm(5));
  }

  private Placed placed() {
    Room room =
        new Room(
            "shop",
            "ground",
            Optional.empty(),
            List.of(),
            new Room.Placing.Free(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Lining.BOARD,
            Lining.BOARD,
            false,
            garage,
            Where.NOWHERE);
    PlacedRoom shop =
        new PlacedRoom(room, Polygon2.rectangle(0, 0, 4000 * MM, 3000 * MM), 0, 2387 * MM);
    WallSpec spec =
        new WallSpec(
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
    House house =
        new House(
            "Toy",
            RulePlace.US,
            Fact.assumed(1994),
            false,
            spec,
            spec,
            List.of(),
            List.of(room),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of());
    return new Placed(house, List.of(), List.of(shop), walls, List.of(), List.of(), List.of());
  }
}
