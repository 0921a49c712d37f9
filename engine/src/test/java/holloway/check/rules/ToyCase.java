package holloway.check.rules;

import holloway.check.ToyHouse;
import holloway.check.ToyPlan;
import holloway.finding.Finding;
import holloway.finding.Severity;
import holloway.framing.Member;
import holloway.framing.MemberKind;
import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Point3;
import holloway.geometry.Polygon2;
import holloway.hollow.AccessPlace;
import holloway.hollow.Hollow;
import holloway.hollow.HollowKind;
import holloway.hollow.SiteKind;
import holloway.house.Conduit;
import holloway.house.Fill;
import holloway.house.Lining;
import holloway.house.Roof;
import holloway.house.RulePlace;
import holloway.house.Side;
import holloway.house.Thing;
import holloway.house.TubeWay;
import holloway.house.Where;
import holloway.limits.Figure;
import holloway.limits.LocalRules;
import holloway.limits.OwnRule;
import holloway.limits.RuleKey;
import holloway.plan.Plan;
import holloway.request.Job;
import holloway.request.Outlet;
import holloway.request.Request;
import holloway.request.Spot;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The toy house with things, tubes and an age, and runs made up leg by leg for one rule. */
final class ToyCase {
  private static final long MM = ToyHouse.MM;
  private final ToyStated stated = new ToyStated();
  private final ToySteps run = new ToySteps();
  private boolean feed;
  private String power = "";
  private Job job = Job.UNSTATED;
  private int patches;
  private int outletHeight = 400;
  private final List<Hollow> hollows = new ArrayList<>();
  private final List<Member> members = new ArrayList<>();
  private final List<Plan.PlannedWork> cut = new ArrayList<>();

  static ToyCase toy() {
    return new ToyCase();
  }

  ToyCase place(RulePlace p) {
    stated.place = p;
    return this;
  }

  /** One figure of a rule file based on the US pack. */
  ToyCase rules(RuleKey key, double value, String unit) {
    Figure f = LocalRules.figure("Brookfield", key, value, unit, "by-law 1");
    LocalRules.Stated one = new LocalRules.Stated(f, Optional.of(Severity.STANDARD));
    stated.rules = new LocalRules("Brookfield", "rules.yaml", "us", Map.of(key, one));
    return this;
  }

  /** A rule file based on the US pack that states this rule and no figure. */
  ToyCase own(OwnRule rule) {
    stated.rules = new LocalRules("Brookfield", "rules.yaml", "us", Map.of(), List.of(rule));
    return this;
  }

  ToyCase built(int year) {
    stated.built = year;
    return this;
  }

  ToyCase garage() {
    stated.garage = true;
    return this;
  }

  ToyCase feed() {
    feed = true;
    return this;
  }

  ToyCase job(Job stated) {
    job = stated;
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
    stated.thing(kind, side, south, height);
    return this;
  }

  ToyCase conduit(double inside, int bends, double metres) {
    stated.conduit(inside, bends, metres);
    return this;
  }

  ToyCase tubeWay(TubeWay way) {
    stated.tubeWay(way);
    return this;
  }

  /** A link to another building, with so much earth over it. */
  ToyCase link(Conduit.Kind kind, double depth) {
    stated.link(kind, depth);
    return this;
  }

  /** Power cable in the east wall, from the floor to 2 m, its near side so far from the south. */
  ToyCase powerInWall(long south) {
    stated.powerInWall(south);
    return this;
  }

  ToyCase roof(Roof roof) {
    stated.roof(roof);
    return this;
  }

  /** A leg laid by hand: {@code mm} along x. */
  ToyCase laid(String id, HollowKind kind, double mm) {
    run.leg(id, kind, false, at(0, 1000, 0), at(mm, 1000, 0));
    return this;
  }

  ToyCase fished(String id, HollowKind kind, Point3... path) {
    run.leg(id, kind, true, path);
    return this;
  }

  static Point3 at(double x, double y, double z) {
    return ToyHouse.at(x, y, z);
  }

  ToyCase space(String id, HollowKind kind, Box box) {
    hollows.add(
        new Hollow(
            id, kind, Frame.WORLD, box, Optional.empty(), Fill.EMPTY, "east", Optional.empty()));
    return this;
  }

  /** A crossing of that kind that the run passes. */
  ToyCase through(SiteKind kind) {
    run.through(kind);
    return this;
  }

  /** Steel in both walls, and a knockout of the east one that the run passes. */
  ToyCase steel(boolean knockout) {
    stated.walls = ToyWalls::steel;
    run.crossing("knockout", knockout, List.of("east/stud-1200"));
    return this;
  }

  /** A socket in the den, behind the east wall, so far from the south. */
  ToyCase socketBehind(long south) {
    stated.socketBehind(south);
    return this;
  }

  /** A patch that the plan cuts from the shop into the bay or space behind. */
  ToyCase patched(AccessPlace.Kind kind, String hollow, Point3 at) {
    String id = hollow + "/patch";
    stated.accesses.add(new AccessPlace(id, hollow, at, "shop", kind, Lining.BOARD));
    cut.add(new Plan.PlannedWork(id, "patch", 45, 1, 1, ""));
    return this;
  }

  /** A room over the shop from that x on. */
  ToyCase roomAbove(long fromX) {
    stated.rooms.add(
        ToyWalls.room("bonus", Polygon2.rectangle(fromX * MM, 0, 9000 * MM, 3000 * MM), 2650 * MM));
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
    roomAbove(roomFromX);
    run.crossing("shop/ceiling/2000", false, List.of("shop/ceiling"));
    return this;
  }

  /** The bore through the ceiling of the shop goes on through a floor, into no room. */
  ToyCase floorOver() {
    members.add(
        new Member(
            "shop/subfloor",
            MemberKind.SUBFLOOR,
            Frame.WORLD,
            new Box(0, 4000 * MM, 0, 3000 * MM, 2631 * MM, 2650 * MM),
            "upper",
            false));
    run.crossing("shop/ceiling/chase", false, List.of("shop/ceiling", "shop/subfloor"));
    return this;
  }

  List<Finding> find(String cable, double cutMetres) {
    return find(cable, cutMetres, 1);
  }

  /** With that many cables alike, all through one hole. */
  List<Finding> find(String cable, double cutMetres, int count) {
    List<Plan.PlannedRun> runs = new ArrayList<>();
    for (int i = 1; i <= count; i++) {
      String id = "desk/" + cable + "-" + i;
      runs.add(
          new Plan.PlannedRun(id, "cabinet", "desk", cable, cutMetres, cutMetres, run.steps()));
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
    run.sites().stream()
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
            works(good),
            List.of(),
            List.of(),
            good.survey());
    return PlanRules.find(plan, stated.house(members, hollows, run.sites()), request(cable));
  }

  private List<Plan.PlannedWork> works(Plan good) {
    List<Plan.PlannedWork> out = new ArrayList<>(good.works());
    out.addAll(cut);
    return out;
  }

  private Request request(String cable) {
    Outlet desk =
        new Outlet(
            "desk",
            List.of(
                new Spot.OnWall(ToyStated.spot(Side.EAST, 1000, outletHeight), Optional.empty())),
            List.of(cable),
            0,
            feed,
            power,
            Where.NOWHERE);
    Request toy = holloway.check.ToyRequest.of();
    return new Request(toy.cabinet(), List.of(desk), toy.runs(), toy.wishes(), toy.effort())
        .with(job);
  }

  static Box box(long x, long y, long z) {
    return new Box(0, x * MM, 0, y * MM, 0, z * MM);
  }
}
