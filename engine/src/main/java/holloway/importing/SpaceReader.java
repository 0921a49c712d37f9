package holloway.importing;

import holloway.step.StepEntity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** The spaces of a model: footprint, floor and ceiling. */
final class SpaceReader {
  private final Model model;
  private final Shapes shapes;
  private final Tree tree;
  private final Remarks remarks;

  SpaceReader(Model model, Shapes shapes, Tree tree, Remarks remarks) {
    this.model = model;
    this.shapes = shapes;
    this.tree = tree;
    this.remarks = remarks;
  }

  /**
   * In the order of the file.
   *
   * @throws ModelFault when there is none
   */
  List<RawRoom> read() {
    List<StepEntity> spaces = model.all("IFCSPACE");
    if (spaces.isEmpty()) {
      throw new ModelFault(
          "the model holds no spaces (IfcSpace), so it does not tell where the rooms are; write it"
              + " again from the drawing program with rooms or spaces placed");
    }
    List<RawRoom> out = new ArrayList<>();
    for (StepEntity space : spaces) {
      if (isOutside(space)) {
        remarks.add("space '%s' is outside and was left out".formatted(title(space)));
      } else {
        remarks.attempt("space", space, () -> room(space)).ifPresent(out::add);
      }
    }
    if (out.isEmpty()) {
      throw new ModelFault("no space of the model can be read; the first: " + remarks.all().get(0));
    }
    return out;
  }

  static String title(StepEntity space) {
    return Model.text(space, 7).or(() -> Model.text(space, 2)).orElse("room");
  }

  private static boolean isOutside(StepEntity space) {
    return Set.of("EXTERNAL", "EXTERNAL_EARTH", "EXTERNAL_WATER", "EXTERNAL_FIRE")
        .contains(Model.word(space, 9));
  }

  private RawRoom room(StepEntity space) {
    Optional<StepEntity> storey = tree.storey(space);
    if (storey.isEmpty()) {
      throw new Unreadable("it belongs to no storey");
    }
    Shape shape = shapes.get(space);
    Shape.Outline outline = shape.footprint();
    Set<String> notes = new TreeSet<>(shape.notes());
    notes.addAll(outline.notes());
    double floor = shape.bottom();
    return new RawRoom(space, storey.get(), outline.corners(), floor, shape.top(), notes);
  }
}
