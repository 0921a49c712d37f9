package holloway.housefile;

import holloway.house.Fact;
import holloway.house.Lining;
import holloway.house.Overhead;
import holloway.house.Straps;
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
    return new Overhead(
        layers, e.map("straps", HouseTables.STRAPS_TABLE).flatMap(OverheadReader::straps));
  }

  private static Optional<Straps> straps(Entry e) {
    return e.length("depth")
        .map(d -> new Straps(d, e.length("every").orElse(Fact.assumed(Straps.EVERY))));
  }

  /** Straps carry a level lining: nothing hangs on them under bare joists. */
  static void checkStraps(Entry e, Overhead overhead, Lining shows, boolean vaulted) {
    if (overhead.straps().isPresent() && (vaulted || shows == Lining.OPEN)) {
      e.problem(
          "straps",
          "ceiling: board",
          "",
          vaulted
              ? "straps under a ceiling that follows the rafters are not modelled: leave 'straps' out"
              : "a ceiling that is open has no lining that could hang on straps: keep one of the"
                  + " two");
    }
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
