package holloway.check.rules;

import holloway.check.ToyHouse;
import holloway.check.ToyPlan;
import holloway.finding.Finding;
import holloway.framing.Framed;
import holloway.framing.Member;
import holloway.framing.MemberKind;
import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Point3;
import holloway.geometry.Polygon2;
import holloway.hollow.Hollow;
import holloway.hollow.HollowHouse;
import holloway.hollow.HollowKind;
import holloway.hollow.Site;
import holloway.hollow.SiteKind;
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
import holloway.house.WallSpot;
import holloway.house.Where;
import holloway.plan.Plan;
import holloway.request.Outlet;
import holloway.request.Request;
import holloway.request.Spot;
import holloway.survey.Placed;
import holloway.survey.PlacedRoom;
import holloway.survey.Wall;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** The toy house with things, tubes and an age, and runs made up leg by leg for one rule. */
final class ToyCase {
  private static final long MM = ToyHouse.MM;
  private RulePlace place = RulePlace.US;
  private int built = 1994;
  private boolean garage;
  private boolean feed;
  private String power = "";
  private int patches;
  private int outletHeight = 400;
  private final List<Thing> things = new ArrayList<>();
  private final List<Conduit> conduits = new ArrayList<>();
  private final List<Obstacle> obstacles = new ArrayList<>();
  private final List<Roof> roofs = new ArrayList<>();
  private final List<Hollow> hollows = new ArrayList<>();
  private final List<Site> sites = new ArrayList<>();
  private final List<Plan.PlanStep> steps = new ArrayList<>();
  private final List<Member> members = new ArrayList<>();
  private final List<PlacedRoom> rooms = new ArrayList<>();
  private UnaryOperator<Wall> walls = w -> w;
  private int fish;
  private int holes;

  static ToyCase toy() {
    return new ToyCase();
  }

  ToyCase place(RulePlace p) {
    place = p;
    return this;
  }

  ToyCase built(int year) {
    built = year;
    return this;
  }

  ToyCase garage() {
    garage = true;
    return this;
  }

  ToyCase feed() {
    feed = true;
    return this;
  }

  ToyCase power(String word) {
    power = word;
    return this;
  }

  ToyCase patches(int n) {
    patches = n;
    return this;
  }

  ToyCase outletHeight(int mm) {
    outletHeight = mm;
    return this;
  }

  ToyCase thing(Thing.Kind kind, Side side, long south, long height) {
    things.add(
        new Thing(kind, spot(side, south, height), Length.mm(70), Length.mm(114), Where.NOWHERE));
    return this;
  }

  ToyCase conduit(double inside, int bends, double metres) {
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
    return this;
  }

  /** Power cable in the east wall, from the floor to 2 m, its near side so far from the south. */
  ToyCase powerInWall(long south) {
    WallSpot at = spot(Side.EAST, south, 0);
    obstacles.add(
        new Obstacle(
            Obstacle.Kind.POWER,
            Optional.of(new Obstacle.InWall(at.face(), at.along(), fact(10), fact(0), fact(2000))),
            Optional.empty(),
            Where.NOWHERE));
    return this;
  }

  ToyCase roof(Roof roof) {
    roofs.add(roof);
    return this;
  }

  private static Fact<Length> fact(long mm) {
    return Fact.measured(Length.mm(mm), Where.NOWHERE);
  }

  /** A leg laid by hand: {@code mm} along x. */
  ToyCase laid(String id, HollowKind kind, double mm) {
    return leg(id, kind, false, at(0, 1000, 0), at(mm, 1000, 0));
  }

  ToyCase fished(String id, HollowKind kind, Point3... path) {
    return leg(id, kind, true, path);
  }

  static Point3 at(double x, double y, double z) {
    return ToyHouse.at(x, y, z);
  }

  private ToyCase leg(String id, HollowKind kind, boolean blind, Point3... path) {
    double m = 0;
    for (int i = 1; i < path.length; i++) {
      m += path[i - 1].distanceTo(path[i]) / 1e9;
    }
    Optional<Integer> number = blind ? Optional.of(++fish) : Optional.empty();
    steps.add(
        new Plan.PlanStep(
            "leg",
            id,
            Optional.of(kind.word()),
            Optional.empty(),
            List.of(path),
            m,
            Optional.of(blind ? "blind" : "hand"),
            number,
            Optional.of(1.0)));
    return this;
  }

  ToyCase space(String id, HollowKind kind, Box box) {
    hollows.add(
        new Hollow(
            id, kind, Frame.WORLD, box, Optional.empty(), Fill.EMPTY, "east", Optional.empty()));
    return this;
  }

  /** A crossing of that kind that the run passes. */
  ToyCase through(SiteKind kind) {
    String id = "site-" + ++holes;
    sites.add(
        new Site(
            id,
            kind,
            at(0, 0, 0),
            at(0, 0, 100),
            "east/bay-800",
            "attic",
            List.of(),
            List.of(),
            51,
            51,
            false,
            false));
    steps.add(
        new Plan.PlanStep(
            "crossing",
            id,
            Optional.empty(),
            Optional.of("H" + holes),
            List.of(at(0, 0, 0), at(0, 0, 100)),
            0.1,
            Optional.empty(),
            Optional.empty(),
            Optional.empty()));
    return this;
  }

  /** Steel in both walls, and a knockout of the east one that the run passes. */
  ToyCase steel(boolean knockout) {
    walls = ToyWalls::steel;
    crossing("knockout", knockout, List.of("east/stud-1200"));
    return this;
  }

  /** A socket in the den, behind the east wall, so far from the south. */
  ToyCase socketBehind(long south) {
    walls = ToyWalls::shared;
    rooms.add(ToyWalls.den());
    FaceRef face = new FaceRef("den", Side.WEST, 1, Where.NOWHERE);
    WallSpot at = new WallSpot(face, new Along(Side.SOUTH, fact(south)), fact(400));
    things.add(new Thing(Thing.Kind.SOCKET, at, Length.mm(70), Length.mm(114), Where.NOWHERE));
    return this;
  }

  /** The ceiling of the shop bored at 2000, 1500; a room over it from that x on. */
  ToyCase ceilingBored(long roomFromX) {
    members.add(
        new Member(
            "shop/ceiling",
            MemberKind.LINING,
            Frame.WORLD,
            new Box(0, 4000 * MM, 0, 3000 * MM, 2387 * MM, 2400 * MM),
            "shop",
            false));
    rooms.add(
        ToyWalls.room(
            "bonus", Polygon2.rectangle(roomFromX * MM, 0, 9000 * MM, 3000 * MM), 2650 * MM));
    crossing("shop/ceiling/2000", false, List.of("shop/ceiling"));
    return this;
  }

  private void crossing(String id, boolean made, List<String> pierces) {
    Point3 a = at(2000, 1500, 2387);
    Point3 b = at(2000, 1500, 2400);
    sites.add(
        new Site(
            id,
            SiteKind.CEILING,
            a,
            b,
            "east/bay-800",
            "attic",
            pierces,
            List.of(),
            51,
            51,
            made,
            false));
    steps.add(
        new Plan.PlanStep(
            "crossing",
            id,
            Optional.empty(),
            Optional.of("H9"),
            List.of(a, b),
            0.013,
            Optional.empty(),
            Optional.empty(),
            Optional.empty()));
  }

  private static WallSpot spot(Side side, long south, long height) {
    return new WallSpot(
        new FaceRef("shop", side, 1, Where.NOWHERE),
        new Along(Side.SOUTH, fact(south)),
        fact(height));
  }

  List<Finding> find(String cable, double cutMetres) {
    return find(cable, cutMetres, 1);
  }

  /** With that many cables alike, all through one hole. */
  List<Finding> find(String cable, double cutMetres, int count) {
    List<Plan.PlannedRun> runs = new ArrayList<>();
    for (int i = 1; i <= count; i++) {
      String id = "desk/" + cable + "-" + i;
      runs.add(new Plan.PlannedRun(id, "cabinet", "desk", cable, cutMetres, cutMetres, steps));
    }
    List<String> ids = runs.stream().map(Plan.PlannedRun::id).toList();
    Plan good = ToyPlan.good();
    Plan.Totals t = good.totals();
    Plan.Totals totals =
        new Plan.Totals(
            t.objective(),
            t.bound(),
            0,
            t.minutes(),
            t.holes(),
            patches,
            0,
            0,
            0,
            t.money(),
            t.currency(),
            t.zones());
    List<Plan.PlannedHole> made = new ArrayList<>();
    made.add(ToyPlan.hole("west/top/1000", "H1", at(-57, 1000, 2362), "west/bay-800", ids));
    sites.stream()
        .filter(x -> !x.made())
        .forEach(x -> made.add(ToyPlan.hole(x.id(), "H9", x.middle(), "east/bay-800", ids)));
    Plan plan =
        new Plan(
            1,
            "Toy",
            good.profile(),
            good.perMinute(),
            List.of(),
            totals,
            runs,
            made,
            List.of(),
            good.works(),
            List.of(),
            List.of(),
            good.survey());
    return PlanRules.find(plan, house(), request(cable));
  }

  private Request request(String cable) {
    Outlet desk =
        new Outlet(
            "desk",
            List.of(new Spot.OnWall(spot(Side.EAST, 1000, outletHeight), Optional.empty())),
            List.of(cable),
            0,
            feed,
            power,
            Where.NOWHERE);
    Request toy = holloway.check.ToyRequest.of();
    return new Request(toy.cabinet(), List.of(desk), toy.runs(), toy.wishes(), toy.effort());
  }

  private HollowHouse house() {
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
            h.inputs());
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
        new Framed(placed, solid, List.of(), List.of()), all, crossings, base.stands(), List.of());
  }

  static Box box(long x, long y, long z) {
    return new Box(0, x * MM, 0, y * MM, 0, z * MM);
  }
}
