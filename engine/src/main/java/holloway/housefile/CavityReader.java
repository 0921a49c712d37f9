package holloway.housefile;

import holloway.house.Cavity;
import holloway.house.Fact;
import holloway.house.WallSpec;
import holloway.units.Length;
import java.util.List;
import java.util.Optional;

/**
 * Reads the kind of a wall: a cavity wall is masonry in two leaves, with what lies on its inside.
 */
final class CavityReader {
  static final String WORD = "cavity";

  private CavityReader() {}

  /**
   * How it is built, of a cavity wall how its inside is. Whoever says what its studs are has said
   * that it is framed, where walls usually are of masonry too.
   */
  static Optional<WallSpec.Kind> kind(Entry e) {
    if (!isCavity(e)) {
      Optional<WallSpec.Kind> framed =
          e.has("studs") ? Optional.of(WallSpec.Kind.FRAMED) : Optional.empty();
      return e.has("kind") ? e.choice("kind", WallSpec.Kind.class) : framed;
    }
    return e.text("inside")
        .flatMap(t -> Entry.choiceOf(t, WallSpec.Kind.class))
        .or(() -> Optional.of(WallSpec.Kind.MASONRY));
  }

  private static boolean isCavity(Entry e) {
    return e.text("kind").filter(WORD::equals).isPresent();
  }

  /** Another kind, or studs, say that there is none; no kind says nothing. */
  static Optional<Cavity> read(Entry e) {
    boolean cavity = isCavity(e);
    List<Fact<Length>> leaves = TraitReader.lengths(e, "leaves");
    for (String key : List.of("inside", "leaves")) {
      if (e.has(key) && !cavity) {
        e.problem(
            key,
            "kind: cavity",
            "",
            "'" + key + "' is said of a cavity wall (kind: cavity): masonry in two leaves");
      }
    }
    if (!cavity) {
      return e.has("kind") || e.has("studs") ? Optional.of(Cavity.NONE) : Optional.empty();
    }
    long all = leaves.stream().mapToLong(f -> f.value().nm()).sum();
    e.length("thickness")
        .filter(t -> t.value().nm() < all)
        .ifPresent(
            t ->
                e.problem(
                    "leaves",
                    "outer leaf, gap and inner leaf, together less than the thickness",
                    "",
                    "its leaves and gap add up to %s, the whole wall is said to be %s thick"
                        .formatted(new Length(all), t.value())));
    return Optional.of(new Cavity(true, leaves));
  }

  /** Between two rooms there is no weather to keep out. */
  static void isOuter(Entry wall) {
    if (isCavity(wall) && wall.has("between")) {
      wall.problem(
          "kind",
          "kind: masonry",
          "",
          "a cavity wall is an outer one: its gap keeps the weather out; say masonry here");
    }
  }

  /** The same in words. */
  static void write(Words w, WallSpec s) {
    Optional<Cavity> cavity = s.traits().cavity().filter(Cavity::there);
    if (cavity.isEmpty()) {
      w.maybe("kind", s.kind(), Shape::word);
      return;
    }
    w.put("kind", WORD);
    w.maybe("inside", s.kind().filter(k -> k != WallSpec.Kind.MASONRY), Shape::word);
    if (!cavity.get().leaves().isEmpty()) {
      w.put("leaves", cavity.get().leaves().stream().map(f -> Words.of(f)).toList());
    }
  }
}
