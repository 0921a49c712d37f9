package holloway.housefile;

import holloway.house.Lining;
import holloway.house.Overhead;
import holloway.house.WallTraits;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads what a room's ceiling is made of: one word, or its layers from the joists down. */
final class OverheadReader {
  private OverheadReader() {}

  static boolean isVaulted(Entry e) {
    return isList(e) ? false : e.text("ceiling").filter(HouseTables.VAULTED::equals).isPresent();
  }

  static Overhead read(Entry e) {
    List<WallTraits.Layer> layers = new ArrayList<>();
    if (isList(e)) {
      for (Marked.Scalar s : e.texts("ceiling")) {
        Entry.quietly(() -> Forms.layer(s.text(), s.where())).ifPresent(layers::add);
      }
    }
    return layers.isEmpty() ? Overhead.NONE : new Overhead(layers);
  }

  /** What is seen and has to be made good: of layers what is hardest; empty if nobody said. */
  static Optional<Lining> shows(Entry e, Overhead overhead) {
    if (!overhead.layers().isEmpty()) {
      return Optional.of(new WallTraits.Layers(Optional.empty(), overhead.layers()).hardest());
    }
    return isList(e) || isVaulted(e) ? Optional.empty() : e.choice("ceiling", Lining.class);
  }

  private static boolean isList(Entry e) {
    return !e.items("ceiling").isEmpty();
  }
}
