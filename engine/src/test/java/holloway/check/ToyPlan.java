package holloway.check;

import holloway.geometry.Point3;
import holloway.house.Along;
import holloway.house.FaceRef;
import holloway.house.Fact;
import holloway.house.Side;
import holloway.house.WallSpot;
import holloway.house.Where;
import holloway.plan.Plan;
import holloway.request.Effort;
import holloway.request.Outlet;
import holloway.request.Request;
import holloway.request.Run;
import holloway.request.Spot;
import holloway.request.Wishes;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * The plan for {@link ToyHouse} that stands: up from the cabinet in the west wall, over the attic,
 * down to the desk in the east wall; and ways to spoil it.
 */
public final class ToyPlan {
  public static final String RUN = "desk/cat6-1";
  static final Map<String, Double> MINUTES =
      Map.ofEntries(
          Map.entry("zone.attic", 25.0), Map.entry("zone.attic-summer-extra", 15.0),
          Map.entry("bore.set-up", 4.0), Map.entry("bore.plate-ply", 2.5),
          Map.entry("bore.stud", 3.0), Map.entry("bore.bit-step", 0.5),
          Map.entry("bore.second", 4.0), Map.entry("stand.attic", 1.5),
          Map.entry("stand.room", 1.0), Map.entry("stand.patch", 1.3),
          Map.entry("stand.cut-out", 2.2), Map.entry("cut-out.board", 10.0),
          Map.entry("patch.wall-board", 55.0), Map.entry("seal.hole", 2.0),
          Map.entry("fish.set-up", 5.0), Map.entry("fish.hand-over", 8.0),
          Map.entry("fish.metre.empty", 1.0), Map.entry("fish.metre.loose", 4.0),
          Map.entry("lay.metre.attic", 1.0), Map.entry("crew.one-factor", 1.4));

  private ToyPlan() {}

  public static Request request() {
    return request(List.of("cat6"));
  }

  public static Request request(List<String> cables) {
    WallSpot cabinet = spot(Side.WEST, 1000, 1200);
    Outlet desk =
        new Outlet(
            "desk",
            List.of(new Spot.OnWall(spot(Side.EAST, 1000, 400), Optional.empty())),
            cables,
            0,
            false,
            "",
            Where.NOWHERE);
    List<Run> runs = new ArrayList<>();
    for (int i = 0; i < cables.size(); i++) {
      runs.add(
          new Run(
              "desk/" + cables.get(i) + "-" + (i + 1),
              "cabinet",
              "desk",
              cables.get(i),
              false,
              Optional.empty()));
    }
    return new Request(
        new Request.Cabinet(cabinet, Where.NOWHERE),
        List.of(desk),
        runs,
        Wishes.NONE,
        new Effort(MINUTES, false));
  }

  private static WallSpot spot(Side side, long south, long height) {
    return new WallSpot(
        new FaceRef("shop", side, 1, Where.NOWHERE),
        new Along(Side.SOUTH, Fact.measured(Length.mm(south), Where.NOWHERE)),
        Fact.measured(Length.mm(height), Where.NOWHERE));
  }

  /** 1.124 m up, 76 mm plates, 0.1 + 4.114 + 0.1 m laid, 76 mm plates, 1.924 m down. */
  static List<Plan.PlanStep> steps() {
    return List.of(
        fish("west/bay-800", 1, 6.124, p(-57, 1000, 1200), p(-57, 1000, 2324)),
        bore("west/top/1000", "H1", p(-57, 1000, 2324), p(-57, 1000, 2400)),
        laid(
            "attic",
            4.314,
            p(-57, 1000, 2400),
            p(-57, 1000, 2500),
            p(4057, 1000, 2500),
            p(4057, 1000, 2400)),
        bore("east/top/1000", "H2", p(4057, 1000, 2400), p(4057, 1000, 2324)),
        fish("east/bay-800", 2, 6.924, p(4057, 1000, 2324), p(4057, 1000, 400)));
  }

  public static Plan good() {
    return good(List.of("cat6"));
  }

  public static Plan good(List<String> cables) {
    List<Plan.PlannedRun> runs = new ArrayList<>();
    for (int i = 0; i < cables.size(); i++) {
      runs.add(
          new Plan.PlannedRun(
              "desk/" + cables.get(i) + "-" + (i + 1),
              "cabinet",
              "desk",
              cables.get(i),
              7.514,
              12,
              steps()));
    }
    List<String> ids = runs.stream().map(Plan.PlannedRun::id).toList();
    List<Plan.PlannedHole> holes =
        List.of(
            hole("west/top/1000", "H1", p(-57, 1000, 2362), "west/bay-800", ids),
            hole("east/top/1000", "H2", p(4057, 1000, 2362), "east/bay-800", ids));
    return summed(
        new Plan(
            1,
            "Toy",
            "least-work",
            Effort.PER_MINUTE,
            List.of(),
            null,
            runs,
            holes,
            List.of(),
            works(),
            List.of(),
            List.of(),
            new Plan.SurveyNotes(List.of(), List.of(), List.of())));
  }

  /** A bore takes (4 + 2 plies × 2.5) × 1.5 in the attic and 2 to seal: 15.5 minutes. */
  static List<Plan.PlannedWork> works() {
    return List.of(
        new Plan.PlannedWork("cabinet/cut-out", "cut-out", 10, 0, 0, ""),
        new Plan.PlannedWork("desk/cut-out", "cut-out", 10, 0, 0, ""),
        new Plan.PlannedWork("east/top/1000/bore", "bore", 15.5, 1, 0, ""),
        new Plan.PlannedWork("west/top/1000/bore", "bore", 15.5, 1, 0, ""),
        new Plan.PlannedWork("zone/attic", "zone", 25, 0, 0, "attic"));
  }

  /**
   * The same plan with its totals added up, so that a spoiled plan is refused for its fault only.
   */
  static Plan summed(Plan p) {
    double minutes =
        p.works().stream().mapToDouble(Plan.PlannedWork::minutes).sum()
            + p.runs().stream()
                .flatMap(r -> r.steps().stream())
                .mapToDouble(s -> s.minutes().orElse(0.0))
                .sum();
    long objective = Math.round(minutes * Effort.PER_MINUTE);
    int patches = p.works().stream().mapToInt(Plan.PlannedWork::patches).sum();
    int bores = p.holes().stream().mapToInt(Plan.PlannedHole::bores).sum();
    List<String> zones =
        p.works().stream()
            .filter(w -> w.kind().equals("zone"))
            .map(Plan.PlannedWork::zone)
            .sorted()
            .toList();
    double route = p.runs().stream().mapToDouble(Plan.PlannedRun::routeM).sum();
    double cable = p.runs().stream().mapToDouble(Plan.PlannedRun::cableM).sum();
    return p.withRuns(
        p.runs(),
        new Plan.Totals(
            objective,
            objective,
            0,
            minutes,
            bores + patches,
            patches,
            route,
            cable,
            0,
            Optional.empty(),
            "USD",
            zones));
  }

  static Plan withSteps(Plan p, UnaryOperator<List<Plan.PlanStep>> change) {
    List<Plan.PlannedRun> runs = new ArrayList<>();
    for (Plan.PlannedRun r : p.runs()) {
      List<Plan.PlanStep> steps = change.apply(new ArrayList<>(r.steps()));
      double m = steps.stream().mapToDouble(Plan.PlanStep::m).sum();
      runs.add(new Plan.PlannedRun(r.id(), r.from(), r.to(), r.cable(), m, m + 5, steps));
    }
    return summed(p.withRuns(runs, p.totals()));
  }

  static Plan withStep(Plan p, int index, Plan.PlanStep step) {
    return withSteps(
        p,
        s -> {
          s.set(index, step);
          return s;
        });
  }

  public static Plan with(Plan p, List<Plan.PlannedHole> holes, List<Plan.PlannedWork> works) {
    return summed(
        new Plan(
            p.format(),
            p.house(),
            p.profile(),
            p.perMinute(),
            p.inputs(),
            p.totals(),
            p.runs(),
            holes,
            p.unrouted(),
            works,
            p.findings(),
            p.materials(),
            p.survey()));
  }

  public static Plan.PlannedHole hole(
      String id, String label, Point3 at, String bay, List<String> runs) {
    return hole(id, label, at, bay, runs, 13, 1);
  }

  public static Plan.PlannedHole hole(
      String id, String label, Point3 at, String bay, List<String> runs, int diameter, int bores) {
    return new Plan.PlannedHole(
        id,
        label,
        "top plate",
        diameter,
        76,
        at,
        List.of(bay, "attic"),
        "from the attic",
        "attic",
        List.of(id + "/bore", "zone/attic"),
        15.5,
        runs,
        false,
        List.of(),
        bores,
        List.of(),
        List.of("top plate"));
  }

  public static Point3 p(double x, double y, double z) {
    return ToyHouse.at(x, y, z);
  }

  static Plan.PlanStep fish(String hollow, int fish, double minutes, Point3... path) {
    return new Plan.PlanStep(
        "leg",
        hollow,
        Optional.of(hollow.equals("attic") ? "attic" : "stud bay"),
        Optional.empty(),
        List.of(path),
        metres(path),
        Optional.of("blind"),
        Optional.of(fish),
        Optional.of(minutes));
  }

  static Plan.PlanStep laid(String hollow, double minutes, Point3... path) {
    return new Plan.PlanStep(
        "leg",
        hollow,
        Optional.of(hollow.equals("attic") ? "attic" : "stud bay"),
        Optional.empty(),
        List.of(path),
        metres(path),
        Optional.of("hand"),
        Optional.empty(),
        Optional.of(minutes));
  }

  static Plan.PlanStep bore(String id, String label, Point3... path) {
    return new Plan.PlanStep(
        "crossing",
        id,
        Optional.empty(),
        Optional.of(label),
        List.of(path),
        metres(path),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  static Plan.PlanStep access(String id, Point3 at) {
    return new Plan.PlanStep(
        "crossing",
        id,
        Optional.empty(),
        Optional.empty(),
        List.of(at, at),
        0,
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private static double metres(Point3... path) {
    long nm = 0;
    for (int i = 1; i < path.length; i++) {
      nm += path[i - 1].distanceTo(path[i]);
    }
    return nm / 1e9;
  }
}
