package holloway.report;

import holloway.survey.Misclosure;
import holloway.survey.Placed;
import holloway.survey.Unaccounted;
import java.util.List;

/** Loops that do not close and space that nothing accounts for, in the reader's units. */
final class DoubtWords {
  private final Placed placed;
  private final UnitWords units;

  DoubtWords(Placed placed, UnitWords units) {
    this.placed = placed;
    this.units = units;
  }

  List<String> misclosures() {
    return placed.misclosures().stream().map(this::line).toList();
  }

  List<String> unaccounted() {
    return placed.unaccounted().stream().map(this::line).toList();
  }

  private String line(Misclosure m) {
    return "%s: off by %s, %s would be usual; measured: %s"
        .formatted(
            m.where(),
            units.tape(m.size().nm()),
            units.tape(m.tolerance().nm()),
            String.join(", ", m.measurements()));
  }

  private String line(Unaccounted u) {
    long wide = u.outline().xRange().hi() - u.outline().xRange().lo();
    long deep = u.outline().yRange().hi() - u.outline().yRange().lo();
    return "%s level: %s by %s (%s) that no room or wall accounts for; likely %s"
        .formatted(
            u.level(), units.tape(wide), units.tape(deep), units.area(u.areaM2()), u.likely());
  }
}
