package holloway.schedule;

import holloway.geometry.Point3;
import holloway.plan.Plan;
import java.util.List;
import java.util.Optional;

/**
 * Whether the force that a pull states can be so at all, from its way alone. A cable in hand drags
 * nothing. One that is drawn does, unless it comes down at its end, where its own weight may carry
 * it: then whoever catches it pulls with nothing.
 */
final class DragReferee {
  private static final long DOWN = 1_000_000;

  private DragReferee() {}

  /**
   * @param steps of the run that the pull takes it along, in order
   */
  static Optional<String> fault(Pull p, List<Plan.PlanStep> steps) {
    if (!p.feed().equals("fish")) {
      return p.newtons() == 0 ? Optional.empty() : Optional.of("a cable in hand drags nothing");
    }
    return p.newtons() > 0 || (p.newtons() == 0 && comesDown(steps))
        ? Optional.empty()
        : Optional.of("a cable that is drawn drags, and comes down nowhere");
  }

  private static boolean comesDown(List<Plan.PlanStep> steps) {
    List<Point3> way = steps.stream().flatMap(s -> s.path().stream()).toList();
    long top = way.stream().mapToLong(Point3::z).max().orElse(0);
    return !way.isEmpty() && top - way.get(way.size() - 1).z() > DOWN;
  }
}
