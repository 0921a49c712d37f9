package holloway.plan;

import holloway.geometry.Point3;
import holloway.house.Conduit;
import holloway.house.TubeWay;
import holloway.limits.PullForce;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What one cable is pulled with along a fish. Drawn paths are pulled along as they lie; of a stated
 * tube nobody knows where it turns, so that its own turns and length count, part by part.
 */
public final class FishPull {
  private FishPull() {}

  /**
   * @param tubes those of the house
   */
  public static PullForce of(List<Plan.PlanStep> fish, String cable, List<Conduit> tubes) {
    List<Point3> path = new ArrayList<>();
    double hardest = 0;
    double turns = 0;
    for (Plan.PlanStep s : fish) {
      Optional<Conduit> tube =
          tubes.stream()
              .filter(c -> c.kind() == Conduit.Kind.TUBE && s.id().equals("conduit/" + c.name()))
              .findFirst();
      if (tube.isEmpty()) {
        path.addAll(s.path());
        continue;
      }
      double rise = (s.path().get(s.path().size() - 1).z() - s.path().get(0).z()) / 1e9;
      for (TubeWay.Part p : tube.get().way().parts()) {
        PullForce f = PullForce.tube(cable, p.length().toMetres(), p.degrees(), rise);
        hardest = Math.max(hardest, f.newtons());
        turns += f.turns();
      }
    }
    PullForce seen = path.isEmpty() ? new PullForce(0, 0) : PullForce.along(cable, path);
    return new PullForce(Math.max(hardest, seen.newtons()), turns + seen.turns());
  }
}
