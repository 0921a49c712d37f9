package holloway.check;

import holloway.geometry.Point3;
import holloway.plan.Plan;
import java.util.List;
import java.util.Optional;

/** Steps of a run through {@link ToyHouse}, points in millimetres. */
public final class ToySteps {
  private ToySteps() {}

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
