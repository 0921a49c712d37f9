package holloway.housefile;

import holloway.house.Fact;
import holloway.house.Side;
import holloway.house.Timber;
import holloway.house.WallSpec;
import holloway.house.WallTraits;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads what only some walls are: shared, punched, lined in layers, before a void. */
final class TraitReader {
  private TraitReader() {}

  static WallTraits traits(Entry e, Optional<Side> side) {
    boolean wood = e.timber("studs").filter(t -> t.value().kind() != Timber.Kind.STEEL).isPresent();
    if (wood && e.has("knockouts")) {
      e.problem(
          "knockouts",
          "studs: steel 3-5/8 in",
          "",
          "only steel studs have knockouts, and these are of wood");
    }
    Optional<Integer> rows = e.whole("rows");
    boolean solid = CavityReader.kind(e).filter(k -> k != WallSpec.Kind.FRAMED).isPresent();
    if (rows.filter(n -> n == 2).isPresent() && solid) {
      e.problem("rows", "", "", "only a framed wall has rows of studs");
    }
    return new WallTraits(
            e.yesNo("party"),
            lengths(e, "knockouts"),
            lining(e, side),
            Optional.empty(),
            Optional.empty(),
            rows,
            behindBoard(e))
        .withBattens(BattensReader.read(e, side))
        .withCavity(CavityReader.read(e));
  }

  private static Optional<Fact<Length>> behindBoard(Entry e) {
    Optional<WallSpec.Kind> kind = CavityReader.kind(e);
    if (e.has("void")
        && kind.filter(k -> k != WallSpec.Kind.FURRED && k != WallSpec.Kind.DABBED).isPresent()) {
      e.problem(
          "void",
          "kind: furred, void: 45 mm",
          "",
          "a void is said of board on battens (kind: furred) or on dabs (kind: dabbed)");
    }
    return e.length("void");
  }

  /** On the side of the face that is named; on both where none is. */
  private static List<WallTraits.Layers> lining(Entry e, Optional<Side> side) {
    List<WallTraits.Layer> layers = new ArrayList<>();
    for (Marked.Scalar s : e.texts("lining")) {
      Entry.quietly(() -> Forms.layer(s.text(), s.where())).ifPresent(layers::add);
    }
    boolean glazed =
        e.choice("kind", WallSpec.Kind.class).filter(k -> k == WallSpec.Kind.GLAZED).isPresent();
    if (glazed && !layers.isEmpty()) {
      e.problem("lining", "", "", "a wall of glass has no lining; leave one of the two out");
    }
    return layers.isEmpty() ? List.of() : List.of(new WallTraits.Layers(side, layers));
  }

  static List<Fact<Length>> lengths(Entry e, String key) {
    List<Fact<Length>> out = new ArrayList<>();
    for (Marked.Scalar s : e.texts(key)) {
      Entry.quietly(() -> Forms.length(s.text(), s.where())).ifPresent(out::add);
    }
    return out;
  }
}
