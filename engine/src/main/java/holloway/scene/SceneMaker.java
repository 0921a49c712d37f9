package holloway.scene;

import holloway.hollow.HollowHouse;
import holloway.plan.Plan;
import java.util.List;

/** The doorway: shapes of a house and of one plan for it. */
public final class SceneMaker {
  private SceneMaker() {}

  public static Scene of(HollowHouse house, Plan plan) {
    HouseShapes shapes = new HouseShapes(house);
    PlanShapes planned = new PlanShapes(plan, Air.of(house));
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
}
