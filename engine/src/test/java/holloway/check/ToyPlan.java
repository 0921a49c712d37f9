package holloway.check;

import static holloway.check.ToySteps.bore;
import static holloway.check.ToySteps.fish;
import static holloway.check.ToySteps.laid;
import static holloway.check.ToySteps.p;

import holloway.geometry.Point3;
import holloway.plan.Plan;
import holloway.request.Effort;
import java.util.ArrayList;
import java.util.List;

/**
 * The plan for {@link ToyHouse} that stands: up from the cabinet in the west wall, over the attic,
 * down to the desk in the east wall.
 */
public final class ToyPlan {
  public static final String RUN = "desk/cat6-1";

  private ToyPlan() {}

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
    return Spoiled.summed(
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

  /** A bore takes (4 + 2 plies × 2.5) × 1.5 in the attic and 2 to seal: 15.5 minutes. */
  static List<Plan.PlannedWork> works() {
    return List.of(
        new Plan.PlannedWork("cabinet/cut-out", "cut-out", 10, 0, 0, ""),
        new Plan.PlannedWork("desk/cut-out", "cut-out", 10, 0, 0, ""),
        new Plan.PlannedWork("east/top/1000/bore", "bore", 15.5, 1, 0, ""),
        new Plan.PlannedWork("west/top/1000/bore", "bore", 15.5, 1, 0, ""),
        new Plan.PlannedWork("zone/attic", "zone", 25, 0, 0, "attic"));
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
}
