package holloway.importing;

import holloway.step.StepEntity;
import java.util.List;
import java.util.Optional;

/** The slab under a level's floor. */
final class FloorSlabs {
  static final List<String> TYPES =
      List.of("IFCSLAB", "IFCSLABSTANDARDCASE", "IFCSLABELEMENTEDCASE");

  /** Finish or screed may lie on it: its top is up to this far below the floor; millimetres. */
  private static final double BELOW = 350;

  private static final double ABOVE = 30;

  private final Model model;
  private final Shapes shapes;
  private final Materials materials;
  private final Remarks remarks;

  FloorSlabs(Model model, Shapes shapes, Materials materials, Remarks remarks) {
    this.model = model;
    this.shapes = shapes;
    this.materials = materials;
    this.remarks = remarks;
  }

  /**
   * @param thickness millimetres
   */
  record Slab(double thickness, double area, List<Materials.Layer> layers) {
    boolean isConcrete() {
      return Materials.core(layers).filter(Materials.Layer::isConcrete).isPresent();
    }
  }

  /** The largest whose top lies at (or a finish below) that height; millimetres. */
  Optional<Slab> under(double floor) {
    Slab best = null;
    for (StepEntity e : model.all(TYPES)) {
      if (Model.word(e, 8).equals("ROOF")) {
        continue;
      }
      Optional<Slab> slab = remarks.attempt("slab", e, () -> at(e, floor)).flatMap(s -> s);
      if (slab.isPresent() && (best == null || slab.get().area() > best.area() + 1)) {
        best = slab.get();
      }
    }
    return Optional.ofNullable(best);
  }

  private Optional<Slab> at(StepEntity e, double floor) {
    Optional<Shape> shape = shapes.find(e);
    if (shape.isEmpty() || shape.get().top() - floor > ABOVE || floor - shape.get().top() > BELOW) {
      return Optional.empty();
    }
    List<Materials.Layer> layers = materials.layers(e);
    double thick =
        layers.isEmpty() ? shape.get().top() - shape.get().bottom() : Materials.thickness(layers);
    double area =
        shape.get().faces().stream()
            .mapToDouble(f -> Math.abs(Shape.normal(f).z()))
            .max()
            .orElse(0);
    return Optional.of(new Slab(thick, area, layers));
  }
}
