package holloway.schedule;

import holloway.geometry.Point3;
import holloway.plan.Plan;
import java.util.ArrayList;
import java.util.List;

/**
 * A part of a run between two places where hands hold the cable: one fish, or one way that hands go
 * along.
 *
 * @param number along the run, from 0
 * @param steps of the plan, crossings on the way in included
 * @param firstM metres of the run's way up to the end of the stretch
 */
record Stretch(
    Plan.PlannedRun run,
    int number,
    boolean blind,
    List<Plan.PlanStep> steps,
    WorkPlace from,
    WorkPlace to,
    double firstM,
    boolean last) {

  /** Laid by hand from one place. */
  boolean isStill() {
    return !blind && from.equals(to);
  }

  List<Plan.PlanStep> legs() {
    return steps.stream().filter(s -> s.kind().equals("leg")).toList();
  }

  List<String> crossings() {
    return steps.stream().filter(s -> s.kind().equals("crossing")).map(Plan.PlanStep::id).toList();
  }

  List<Point3> path() {
    List<Point3> out = new ArrayList<>();
    legs().forEach(s -> out.addAll(s.path()));
    return out;
  }

  double metres() {
    return steps.stream().mapToDouble(Plan.PlanStep::m).sum();
  }

  /**
   * What is drawn together: for a fish the same hollows from the same point, as the take-off counts
   * pulls; by hand also to the same point.
   */
  String key() {
    List<Point3> path = path();
    StringBuilder out = new StringBuilder(path.get(0).toString());
    legs().forEach(s -> out.append('\n').append(s.id()));
    if (!blind) {
      out.append('\n').append(path.get(path.size() - 1)).append('\n').append(crossings());
    }
    return out.toString();
  }
}
