package holloway.scene;

import holloway.hollow.Hollow;
import holloway.hollow.HollowHouse;
import holloway.hollow.HollowKind;
import holloway.plan.Plan;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** The doorway: shapes of a house and of one plan for it. */
public final class SceneMaker {
  private SceneMaker() {}

  public static Scene of(HollowHouse house, Plan plan) {
    HouseShapes shapes = new HouseShapes(house);
    PlanShapes planned = new PlanShapes(plan, Air.of(house), guessed(house));
    List<Scene.Level> levels = shapes.levels();
    return new Scene(
        plan.house(),
        levels,
        shapes.rooms(),
        shapes.solids(levels),
        shapes.spaces(planned.runsByHollow()),
        planned.ends(),
        planned.tubes(),
        planned.pins(),
        planned.flags());
  }

  /** Hollows of which only the ends and the length are known. */
  private static Set<String> guessed(HollowHouse house) {
    return house.hollows().stream()
        .filter(h -> h.kind() == HollowKind.OLD_CABLE || h.kind() == HollowKind.CONDUIT)
        .map(Hollow::id)
        .collect(Collectors.toSet());
  }
}
