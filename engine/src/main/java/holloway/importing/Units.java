package holloway.importing;

import holloway.step.StepEntity;
import holloway.step.StepFile;
import holloway.step.StepValue;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The model's unit of length (IfcUnitAssignment, ISO 16739).
 *
 * @param mm millimetres in it
 * @param metric it is a metre or a part of one
 * @param stated the model says so; else millimetres were taken
 */
record Units(double mm, boolean metric, boolean stated) {
  private static final Map<String, Double> PREFIX =
      Map.of("KILO", 1e6, "DECI", 100.0, "CENTI", 10.0, "MILLI", 1.0, "MICRO", 1e-3);

  static Units of(StepFile file) {
    for (StepEntity assignment : file.listOf("IFCUNITASSIGNMENT")) {
      for (StepValue v : Model.items(assignment.value(0))) {
        Optional<Units> found = find(file, v).flatMap(u -> length(file, u));
        if (found.isPresent()) {
          return found.get();
        }
      }
    }
    return new Units(1, true, false);
  }

  private static Optional<StepEntity> find(StepFile file, StepValue v) {
    return v instanceof StepValue.Ref r ? file.find(r.id()) : Optional.empty();
  }

  private static Optional<Units> length(StepFile file, StepEntity unit) {
    if (!Model.word(unit, 1).equals("LENGTHUNIT")) {
      return Optional.empty();
    }
    if (unit.type().equals("IFCSIUNIT")) {
      return Optional.of(new Units(si(unit), true, true));
    }
    StepEntity measure =
        find(file, unit.value(3))
            .orElseThrow(() -> new ModelFault("the model's unit of length has no factor"));
    double factor = Model.number(measure.value(0)).orElse(0.0);
    double base =
        find(file, measure.value(1))
            .filter(u -> u.type().equals("IFCSIUNIT"))
            .map(Units::si)
            .orElse(0.0);
    double mm = factor * base;
    if (!(mm > 1e-4 && mm < 1e7)) {
      throw new ModelFault("the model's unit of length is not told in metres");
    }
    return Optional.of(new Units(mm, false, true));
  }

  private static double si(StepEntity unit) {
    String prefix = Model.word(unit, 2);
    if (!Model.word(unit, 3).equals("METRE") || !prefix.isEmpty() && !PREFIX.containsKey(prefix)) {
      throw new ModelFault(
          "the model's unit of length is no %s of a metre that we know"
              .formatted(List.copyOf(new java.util.TreeSet<>(PREFIX.keySet()))));
    }
    return prefix.isEmpty() ? 1000 : PREFIX.get(prefix);
  }
}
