package holloway.importing;

import holloway.step.StepEntity;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The straight walls of a model: where they run and how thick they are. */
final class WallReader {
  static final List<String> TYPES =
      List.of("IFCWALL", "IFCWALLSTANDARDCASE", "IFCWALLELEMENTEDCASE");

  /** A thicker "wall" is a block, or several walls in one solid; millimetres. */
  private static final double THICKEST = 1_000;

  private final Model model;
  private final Shapes shapes;
  private final Materials materials;
  private final Move move;
  private final Remarks remarks;

  WallReader(Model model, Shapes shapes, Materials materials, Move move, Remarks remarks) {
    this.model = model;
    this.shapes = shapes;
    this.materials = materials;
    this.move = move;
    this.remarks = remarks;
  }

  /** By entity number. */
  Map<Long, PlanWall> read() {
    Map<Long, PlanWall> out = new TreeMap<>();
    for (StepEntity e : model.all(TYPES)) {
      remarks.attempt("wall", e, () -> wall(e)).ifPresent(w -> out.put(w.id(), w));
    }
    return out;
  }

  private PlanWall wall(StepEntity e) {
    List<Materials.Layer> layers = materials.layers(e);
    Optional<Shape> shape = shapes.find(e).map(s -> s.moved(move));
    if (shape.isEmpty()) {
      throw new Unreadable("it has no body");
    }
    List<Vec> corners = shape.get().shadow().corners();
    Vec along = longest(corners);
    Vec across = new Vec(-along.y(), along.x(), 0);
    double[] s = extent(corners, along);
    double[] t = extent(corners, across);
    double thickness = layers.isEmpty() ? t[1] - t[0] : Materials.thickness(layers);
    if (t[1] - t[0] > THICKEST || thickness > THICKEST || thickness < 10) {
      throw new Unreadable("it is no straight wall of one thickness");
    }
    Vec centre = along.times((s[0] + s[1]) / 2).plus(across.times((t[0] + t[1]) / 2));
    return new PlanWall(
        e.id(),
        centre,
        along,
        s[1] - s[0],
        thickness,
        shape.get().bottom(),
        shape.get().top(),
        layers);
  }

  /** Along the longest edge, towards east or else north. */
  private static Vec longest(List<Vec> corners) {
    Vec best = Vec.ZERO;
    for (int i = 0; i < corners.size(); i++) {
      Vec d = corners.get((i + 1) % corners.size()).minus(corners.get(i));
      best = d.length() > best.length() + 1e-6 ? d : best;
    }
    Vec u = best.unit();
    return u.x() < -1e-6 || Math.abs(u.x()) <= 1e-6 && u.y() < 0 ? u.times(-1) : u;
  }

  static double[] extent(List<Vec> points, Vec along) {
    List<Double> all = new ArrayList<>();
    points.forEach(p -> all.add(p.dot(along)));
    return new double[] {
      all.stream().mapToDouble(d -> d).min().orElseThrow(),
      all.stream().mapToDouble(d -> d).max().orElseThrow()
    };
  }
}
