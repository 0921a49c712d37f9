package holloway.importing;

import holloway.step.StepEntity;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What is part of what: storeys, spaces and products (IfcRelAggregates, IfcRelContained...). */
final class Tree {
  private static final int DEEPEST = 30;

  private final Model model;
  private final Map<Long, StepEntity> parent = new TreeMap<>();

  Tree(Model model) {
    this.model = model;
    learn("IFCRELAGGREGATES", 4, 5);
    learn("IFCRELCONTAINEDINSPATIALSTRUCTURE", 5, 4);
    // A window fills an opening, and an opening is in a wall: both stand on the wall's storey.
    learn("IFCRELFILLSELEMENT", 4, 5);
    learn("IFCRELVOIDSELEMENT", 4, 5);
  }

  private void learn(String type, int whole, int parts) {
    for (StepEntity rel : model.all(type)) {
      Optional<StepEntity> of = model.find(rel.value(whole));
      if (of.isPresent()) {
        model.members(rel.value(parts)).forEach(p -> parent.putIfAbsent(p.id(), of.get()));
        model.find(rel.value(parts)).ifPresent(p -> parent.putIfAbsent(p.id(), of.get()));
      }
    }
  }

  Optional<StepEntity> parent(StepEntity e) {
    return Optional.ofNullable(parent.get(e.id()));
  }

  /** The nearest one of that type that it is part of. */
  Optional<StepEntity> within(StepEntity e, String type) {
    Optional<StepEntity> at = parent(e);
    for (int i = 0; i < DEEPEST && at.isPresent(); i++) {
      if (at.get().type().equals(type)) {
        return at;
      }
      at = parent(at.get());
    }
    return Optional.empty();
  }

  Optional<StepEntity> storey(StepEntity e) {
    return within(e, "IFCBUILDINGSTOREY");
  }
}
