package holloway.importing;

import holloway.step.StepEntity;
import holloway.step.StepFile;
import holloway.step.StepValue;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The entities of a model with its unit of length; values by their place in the IFC schema. */
final class Model {
  /** Nothing of a house lies further from its site's origin, millimetres. */
  private static final double FARTHEST = 1e11;

  private final StepFile file;
  private final Units units;

  Model(StepFile file) {
    this.file = file;
    this.units = Units.of(file);
  }

  Units units() {
    return units;
  }

  List<StepEntity> all(String type) {
    return file.listOf(type);
  }

  /** Of several types, each in the order of the file. */
  List<StepEntity> all(List<String> types) {
    List<StepEntity> out = new ArrayList<>();
    types.forEach(t -> out.addAll(file.listOf(t)));
    return out;
  }

  /** What a value refers to, if it is a reference to something that was kept. */
  Optional<StepEntity> find(StepValue v) {
    return v instanceof StepValue.Ref r ? file.find(r.id()) : Optional.empty();
  }

  /**
   * What a value that need not be there refers to; a reference to what we do not know is refused.
   */
  Optional<StepEntity> maybe(StepEntity of, int at) {
    return of.value(at) instanceof StepValue.Absent ? Optional.empty() : Optional.of(get(of, at));
  }

  StepEntity get(StepEntity of, int at) {
    return find(of.value(at))
        .orElseThrow(
            () ->
                new Unreadable(
                    "#%d (%s) lacks what value %d should name"
                        .formatted(of.id(), of.type(), at + 1)));
  }

  /** The entities that a list refers to; one that we do not know is refused. */
  List<StepEntity> getMembers(StepValue v) {
    List<StepEntity> all = members(v);
    if (all.size() < items(v).size()) {
      throw new Unreadable("a part of its shape is of a kind that we do not read");
    }
    return all;
  }

  /** The entities that a list refers to; those not kept are left out. */
  List<StepEntity> members(StepValue v) {
    return items(v).stream().map(this::find).flatMap(Optional::stream).toList();
  }

  static List<StepValue> items(StepValue v) {
    if (v instanceof StepValue.Many m) {
      return m.items();
    }
    return v instanceof StepValue.Typed t && t.values().size() == 1
        ? items(t.values().get(0))
        : List.of();
  }

  static Optional<String> text(StepEntity e, int at) {
    return e.value(at) instanceof StepValue.Text t && !t.text().isBlank()
        ? Optional.of(t.text().strip())
        : Optional.empty();
  }

  static String word(StepEntity e, int at) {
    return e.value(at) instanceof StepValue.Word w ? w.name() : "";
  }

  static Optional<Double> number(StepValue v) {
    if (v instanceof StepValue.Number n) {
      return Optional.of(n.value());
    }
    return v instanceof StepValue.Typed t && t.values().size() == 1
        ? number(t.values().get(0))
        : Optional.empty();
  }

  /** A length in millimetres. */
  Optional<Double> length(StepEntity e, int at) {
    return number(e.value(at)).map(n -> mm(n));
  }

  double getLength(StepEntity e, int at) {
    return length(e, at)
        .orElseThrow(() -> new Unreadable("#%d (%s) lacks a length".formatted(e.id(), e.type())));
  }

  private double mm(double n) {
    double mm = n * units.mm();
    if (!(Math.abs(mm) < FARTHEST)) {
      throw new Unreadable("a length of %s is beyond any house".formatted(n));
    }
    return mm;
  }

  /** A point of two or three coordinates, millimetres. */
  Vec point(StepEntity e) {
    return coordinates(e.value(0), units.mm());
  }

  Vec direction(StepEntity e) {
    return coordinates(e.value(0), 1);
  }

  Vec coordinates(StepValue v, double unit) {
    List<StepValue> items = items(v);
    double[] c = new double[3];
    if (items.size() < 2 || items.size() > 3) {
      throw new Unreadable("a point needs two or three coordinates");
    }
    for (int i = 0; i < items.size(); i++) {
      c[i] =
          number(items.get(i)).orElseThrow(() -> new Unreadable("a coordinate is no number"))
              * unit;
      if (!(Math.abs(c[i]) < FARTHEST)) {
        throw new Unreadable("a point lies beyond any house");
      }
    }
    return new Vec(c[0], c[1], c[2]);
  }
}
