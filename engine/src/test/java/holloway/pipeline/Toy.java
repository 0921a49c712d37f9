package holloway.pipeline;

import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.finding.Severity;
import holloway.geometry.Point3;
import holloway.house.House;
import holloway.house.RulePlace;
import holloway.house.Side;
import holloway.house.Where;
import holloway.plan.Plan;
import holloway.request.Effort;
import holloway.request.Outlet;
import holloway.request.Request;
import holloway.request.Run;
import holloway.request.Spot;
import holloway.request.Wishes;
import holloway.schedule.HoleCard;
import holloway.survey.Placed;
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
    return ToyCottage.house(place, built);
  }

  public static Placed placed() {
    return ToyCottage.placed();
  }

  public static Placed placed(House house) {
    return ToyCottage.placed(house);
  }

  public static Request request() {
    return new Request(
        new Request.Cabinet(ToyCottage.spot("garage", Side.EAST), Where.NOWHERE),
        List.of(
            new Outlet(
                "desk",
                List.of(new Spot.OnWall(ToyCottage.spot("office", Side.WEST), Optional.empty())),
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
