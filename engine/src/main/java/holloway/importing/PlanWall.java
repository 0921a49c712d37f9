package holloway.importing;

import java.util.List;

/**
 * A wall of the model in the squared plan, millimetres.
 *
 * @param along unit vector along it
 */
record PlanWall(
    long id,
    Vec centre,
    Vec along,
    double length,
    double thickness,
    double bottom,
    double top,
    List<Materials.Layer> layers) {
  PlanWall {
    layers = List.copyOf(layers);
  }

  Vec across() {
    return new Vec(-along.y(), along.x(), 0);
  }
}
