package holloway.importing;

import holloway.step.StepEntity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** The bodies of products in the world. */
final class Shapes {
  private final Model model;
  private final Placements placements;

  Shapes(Model model) {
    this.model = model;
    this.placements = new Placements(model);
  }

  Move placement(StepEntity product) {
    return placements.of(product);
  }

  /**
   * @throws Unreadable when it has a body that we cannot read
   */
  Optional<Shape> find(StepEntity product) {
    Optional<StepEntity> body = body(product);
    if (body.isEmpty()) {
      return Optional.empty();
    }
    Set<String> notes = new TreeSet<>();
    Solids solids = new Solids(model, placements, notes);
    List<List<Vec>> faces = new ArrayList<>();
    for (StepEntity item : model.getMembers(body.get().value(3))) {
      faces.addAll(solids.faces(item));
    }
    return Optional.of(new Shape(faces, notes).moved(placements.of(product)));
  }

  Shape get(StepEntity product) {
    return find(product).orElseThrow(() -> new Unreadable("it has no body"));
  }

  /** The representation named Body; else the first that is not drawn with lines alone. */
  private Optional<StepEntity> body(StepEntity product) {
    List<StepEntity> all =
        model.find(product.value(6)).map(d -> model.members(d.value(2))).orElse(List.of());
    return all.stream()
        .filter(r -> Model.text(r, 1).filter("Body"::equalsIgnoreCase).isPresent())
        .findFirst()
        .or(() -> all.stream().filter(Shapes::isSolid).findFirst());
  }

  private static boolean isSolid(StepEntity representation) {
    String type = Model.text(representation, 2).orElse("");
    return !type.startsWith("Curve")
        && !type.startsWith("Geometric")
        && !type.equals("BoundingBox")
        && Model.text(representation, 1).filter("Axis"::equalsIgnoreCase).isEmpty();
  }
}
