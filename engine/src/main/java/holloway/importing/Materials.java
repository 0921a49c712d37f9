package holloway.importing;

import holloway.step.StepEntity;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What products are made of, said of them or of their type (IfcRelAssociatesMaterial). */
final class Materials {
  private final Model model;
  private final Map<Long, StepEntity> material = new TreeMap<>();
  private final Map<Long, StepEntity> type = new TreeMap<>();

  Materials(Model model) {
    this.model = model;
    for (StepEntity rel : model.all("IFCRELASSOCIATESMATERIAL")) {
      model
          .find(rel.value(5))
          .ifPresent(m -> model.members(rel.value(4)).forEach(o -> material.put(o.id(), m)));
    }
    for (StepEntity rel : model.all("IFCRELDEFINESBYTYPE")) {
      model
          .find(rel.value(5))
          .ifPresent(t -> model.members(rel.value(4)).forEach(o -> type.put(o.id(), t)));
    }
  }

  /** One layer, millimetres. */
  record Layer(String name, double thickness) {
    /** By English words; other languages are not guessed at. */
    boolean isMasonry() {
      return name.toLowerCase(Locale.ROOT)
          .matches(
              ".*\\b(bricks?|brickwork|(concrete |aerated )?blocks?|blockwork|masonry|stone)\\b.*");
    }

    boolean isFraming() {
      return name.toLowerCase(Locale.ROOT).matches(".*\\b(studs?|framing|timber frame)\\b.*");
    }

    boolean isConcrete() {
      return name.toLowerCase(Locale.ROOT).matches(".*\\b(concrete|screed)\\b.*");
    }
  }

  /** Empty when the product's material is not told in layers. */
  List<Layer> layers(StepEntity product) {
    Optional<StepEntity> m =
        Optional.ofNullable(material.get(product.id()))
            .or(() -> Optional.ofNullable(type.get(product.id())).map(t -> material.get(t.id())));
    Optional<StepEntity> set =
        m.filter(e -> e.type().equals("IFCMATERIALLAYERSETUSAGE"))
            .flatMap(e -> model.find(e.value(0)))
            .or(() -> m);
    if (set.filter(e -> e.type().equals("IFCMATERIALLAYERSET")).isEmpty()) {
      return List.of();
    }
    List<Layer> out = new ArrayList<>();
    for (StepEntity layer : model.members(set.get().value(0))) {
      String name = model.find(layer.value(0)).flatMap(e -> Model.text(e, 0)).orElse("unnamed");
      out.add(new Layer(Titles.plain(name, "unnamed"), model.getLength(layer, 1)));
    }
    return out;
  }

  static double thickness(List<Layer> layers) {
    return layers.stream().mapToDouble(Layer::thickness).sum();
  }

  /** The thickest layer says how a thing is built. */
  static Optional<Layer> core(List<Layer> layers) {
    return layers.stream().max((a, b) -> Double.compare(a.thickness(), b.thickness()));
  }

  /** A brick skin before studs makes no masonry wall. */
  static boolean areMasonry(List<Layer> layers) {
    return core(layers).filter(Layer::isMasonry).isPresent()
        && layers.stream().noneMatch(Layer::isFraming);
  }

  static String words(List<Layer> layers, Grid grid) {
    return String.join(
        ", ", layers.stream().map(l -> grid.words(l.thickness()) + " " + l.name()).toList());
  }
}
