package holloway.check.rules;

import holloway.check.ToyHouse;
import holloway.framing.Framed;
import holloway.framing.Member;
import holloway.hollow.AccessPlace;
import holloway.hollow.Hollow;
import holloway.hollow.HollowHouse;
import holloway.hollow.Site;
import holloway.house.Along;
import holloway.house.Conduit;
import holloway.house.FaceRef;
import holloway.house.Fact;
import holloway.house.Fill;
import holloway.house.House;
import holloway.house.Obstacle;
import holloway.house.Roof;
import holloway.house.RulePlace;
import holloway.house.Side;
import holloway.house.Thing;
import holloway.house.TubeWay;
import holloway.house.WallSpot;
import holloway.house.Where;
import holloway.limits.LocalRules;
import holloway.survey.Placed;
import holloway.survey.PlacedRoom;
import holloway.survey.Wall;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** What a house file would state of the toy: its place and age, things, tubes, power and roofs. */
final class ToyStated {
  RulePlace place = RulePlace.US;
  int built = 1994;
  boolean garage;
  LocalRules rules = LocalRules.NONE;
  UnaryOperator<Wall> walls = w -> w;
  final List<PlacedRoom> rooms = new ArrayList<>();
  private final List<Thing> things = new ArrayList<>();
  private final List<Conduit> conduits = new ArrayList<>();
  private final List<Obstacle> obstacles = new ArrayList<>();
  private final List<Roof> roofs = new ArrayList<>();
  final List<AccessPlace> accesses = new ArrayList<>();

  void thing(Thing.Kind kind, Side side, long south, long height) {
    things.add(
        new Thing(kind, spot(side, south, height), Length.mm(70), Length.mm(114), Where.NOWHERE));
  }

  void conduit(double inside, int bends, double metres) {
    WallSpot a = spot(Side.WEST, 1000, 1200);
    conduits.add(
        new Conduit(
            "tube",
            a,
            spot(Side.EAST, 1000, 400),
            Length.mm(inside),
            bends,
            Fact.stated(Length.mm(metres * 1000), Where.NOWHERE),
            Conduit.Kind.TUBE,
            Where.NOWHERE));
  }

  /** The last tube told more closely. */
  void tubeWay(TubeWay way) {
    conduits.add(conduits.remove(conduits.size() - 1).with(way));
  }

  /** A link to another building, with so much earth over it. */
  void link(Conduit.Kind kind, double depth) {
    conduits.add(
        new Conduit(
            "yard",
            spot(Side.WEST, 1000, 400),
            spot(Side.EAST, 1000, 400),
            Length.mm(50),
            1,
            Fact.stated(Length.mm(4000), Where.NOWHERE),
            kind,
            Optional.of(
                new Conduit.Outdoor(
                    true, Optional.of(Fact.stated(Length.mm(depth), Where.NOWHERE)))),
            Where.NOWHERE));
  }

  /** Power cable in the east wall, from the floor to 2 m, its near side so far from the south. */
  void powerInWall(long south) {
    WallSpot at = spot(Side.EAST, south, 0);
    obstacles.add(
        new Obstacle(
            Obstacle.Kind.POWER,
            Optional.of(new Obstacle.InWall(at.face(), at.along(), fact(10), fact(0), fact(2000))),
            Optional.empty(),
            Where.NOWHERE));
  }

  void roof(Roof roof) {
    roofs.add(roof);
  }

  static Fact<Length> fact(long mm) {
    return Fact.measured(Length.mm(mm), Where.NOWHERE);
  }

  /** A socket in the den, behind the east wall, so far from the south. */
  void socketBehind(long south) {
    walls = ToyWalls::shared;
    rooms.add(ToyWalls.den());
    FaceRef face = new FaceRef("den", Side.WEST, 1, Where.NOWHERE);
    WallSpot at = new WallSpot(face, new Along(Side.SOUTH, fact(south)), fact(400));
    things.add(new Thing(Thing.Kind.SOCKET, at, Length.mm(70), Length.mm(114), Where.NOWHERE));
  }

  static WallSpot spot(Side side, long south, long height) {
    return new WallSpot(
        new FaceRef("shop", side, 1, Where.NOWHERE),
        new Along(Side.SOUTH, fact(south)),
        fact(height));
  }

  /** The toy with all of it, and with more solid, hollow and bored parts. */
  HollowHouse house(List<Member> members, List<Hollow> hollows, List<Site> sites) {
    HollowHouse base = ToyHouse.build(Fill.EMPTY, garage);
    Placed p = base.framed().placed();
    House h = p.house();
    House mine =
        new House(
            h.name(),
            place,
            Fact.assumed(built),
            false,
            h.outerWalls(),
            h.innerWalls(),
            h.levels(),
            h.rooms(),
            h.walls(),
            h.openings(),
            roofs,
            h.chases(),
            obstacles,
            conduits,
            h.soffits(),
            h.skirtings(),
            things,
            h.tapes(),
            h.found(),
            h.inputs(),
            h.stairs(),
            h.assumed(),
            h.beams(),
            h.porches(),
            h.layout(),
            rules,
            h.turned());
    List<PlacedRoom> placedRooms = new ArrayList<>(p.rooms());
    placedRooms.addAll(rooms);
    List<Member> solid = new ArrayList<>(base.framed().members());
    solid.addAll(members);
    Placed placed =
        new Placed(
            mine,
            p.levels(),
            placedRooms,
            p.walls().stream().map(walls).toList(),
            p.misclosures(),
            p.unaccounted(),
            p.assumed());
    List<Hollow> all = new ArrayList<>(base.hollows());
    all.addAll(hollows);
    List<Site> crossings = new ArrayList<>(base.sites());
    crossings.addAll(sites);
    return new HollowHouse(
        new Framed(placed, solid, List.of(), List.of()),
        all,
        crossings,
        base.stands(),
        accesses,
        List.of());
  }
}
