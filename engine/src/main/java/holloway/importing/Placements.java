package holloway.importing;

import holloway.step.StepEntity;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Where products stand: chains of IfcLocalPlacement, each within the one it names. */
final class Placements {
  private static final int LONGEST_CHAIN = 60;

  private final Model model;
  private final Map<Long, Move> known = new TreeMap<>();

  Placements(Model model) {
    this.model = model;
  }

  /** From the product's own frame to the world's; a product without a placement stands in it. */
  Move of(StepEntity product) {
    return model.maybe(product, 5).map(p -> placement(p, 0)).orElse(Move.NONE);
  }

  private Move placement(StepEntity p, int depth) {
    Move before = known.get(p.id());
    if (before != null) {
      return before;
    }
    if (depth > LONGEST_CHAIN) {
      throw new Unreadable("its placements lead round in a circle");
    }
    if (!p.type().equals("IFCLOCALPLACEMENT")) {
      throw new Unreadable("it is placed by a " + p.type() + ", which we do not read");
    }
    Move own = model.maybe(p, 1).map(this::axes).orElse(Move.NONE);
    Optional<StepEntity> around = model.maybe(p, 0);
    Move whole = around.map(a -> placement(a, depth + 1).then(own)).orElse(own);
    known.put(p.id(), whole);
    return whole;
  }

  /** IfcAxis2Placement2D or 3D. */
  Move axes(StepEntity a) {
    Vec origin = model.maybe(a, 0).map(model::point).orElse(Vec.ZERO);
    boolean flat = a.type().equals("IFCAXIS2PLACEMENT2D");
    Vec axis = flat ? Vec.Z : model.maybe(a, 1).map(model::direction).orElse(Vec.Z);
    Vec ref = model.maybe(a, flat ? 1 : 2).map(model::direction).orElse(Vec.X);
    return Move.of(origin, axis, ref);
  }

  /** IfcCartesianTransformationOperator3D, with one scale or three. */
  Move operator(StepEntity o) {
    Vec origin = model.maybe(o, 2).map(model::point).orElse(Vec.ZERO);
    Vec x = model.maybe(o, 0).map(model::direction).orElse(Vec.X);
    Vec z = model.maybe(o, 4).map(model::direction).orElse(Vec.Z);
    Move m = Move.of(origin, z, x);
    boolean mirrored =
        model.maybe(o, 1).map(model::direction).filter(y -> y.dot(m.y()) < 0).isPresent();
    double scale = Model.number(o.value(3)).orElse(1.0);
    double scaleY = Model.number(o.value(5)).orElse(scale);
    double scaleZ = Model.number(o.value(6)).orElse(scale);
    Vec y = m.y().times(mirrored ? -scaleY : scaleY);
    return new Move(m.x().times(scale), y, m.z().times(scaleZ), origin);
  }
}
