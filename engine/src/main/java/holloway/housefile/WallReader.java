package holloway.housefile;

import holloway.house.Along;
import holloway.house.FaceRef;
import holloway.house.Fact;
import holloway.house.Fill;
import holloway.house.Opening;
import holloway.house.WallRef;
import holloway.house.WallSpec;
import holloway.house.WallTraits;
import holloway.house.Where;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Reads what is said of walls, and the openings in them. */
final class WallReader {
  /** Keys of a wall that mean nothing where there is none. */
  private static final List<String> NOT_OPEN =
      List.of("every", "fill", "blocks-at", "knockouts", "studs-from", "height", "party", "name");

  private final Defaults defaults;

  WallReader(Defaults defaults) {
    this.defaults = defaults;
  }

  /** {@code outer-walls} or {@code inner-walls}, completed by place and era. */
  WallSpec usual(Entry house, String key, boolean outer) {
    house
        .map(key, HouseTables.WALL_DEFAULT)
        .filter(WallReader::isOpen)
        .ifPresent(
            e ->
                e.problem(
                    "kind",
                    "walls: [{ between: [kitchen, den], kind: open }]",
                    "",
                    "an open side is stated under 'walls:'"));
    WallSpec said =
        house
            .map(key, HouseTables.WALL_DEFAULT)
            .map(
                e ->
                    spec(e, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()))
            .orElse(nothingSaid());
    return defaults.complete(said, outer);
  }

  /** What is said of a level's outer or inner walls; nothing is added to it. */
  static Optional<WallSpec> ofLevel(Entry level, String key) {
    return level
        .map(key, HouseTables.WALL_DEFAULT)
        .map(e -> spec(e, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()));
  }

  private static WallSpec nothingSaid() {
    Optional<Boolean> none = Optional.empty();
    return new WallSpec(
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        none,
        none,
        none,
        List.of(),
        Where.NOWHERE);
  }

  List<WallSpec> walls(Entry house) {
    List<WallSpec> out = new ArrayList<>();
    Map<String, Where> names = new TreeMap<>();
    Map<String, Where> refs = new TreeMap<>();
    for (Entry e : house.maps("walls", HouseTables.WALL)) {
      Optional<WallRef> ref = Spots.wallRef(e, "this wall");
      e.text("name").ifPresent(n -> Unique.claim(e, "name", n, names, "wall"));
      Optional<Along> studsFrom = e.along("studs-from");
      ref.flatMap(WallRef::face)
          .ifPresent(f -> studsFrom.ifPresent(a -> Spots.fits(e, "studs-from", f, a)));
      Optional<Boolean> separation = e.text("separation").map("garage"::equals);
      ref.ifPresent(r -> Unique.claim(e, keyOf(r), refText(r), refs, "wall"));
      ref.map(r -> spec(e, Optional.of(r), e.text("name"), studsFrom, separation))
          .ifPresent(s -> out.add(shaped(e, s)));
    }
    return out;
  }

  private static String keyOf(WallRef r) {
    return r.face().isPresent() ? "side" : "between";
  }

  private static String refText(WallRef r) {
    if (r.face().isPresent()) {
      return r.face().get().toString();
    }
    WallRef.Between b = r.between().orElseThrow();
    boolean inOrder = b.one().compareTo(b.other()) < 0;
    return (inOrder ? b.one() : b.other())
        + " - "
        + (inOrder ? b.other() : b.one())
        + (b.ordinal() == 1 ? "" : " " + b.ordinal());
  }

  private static WallSpec spec(
      Entry e,
      Optional<WallRef> ref,
      Optional<String> name,
      Optional<Along> studsFrom,
      Optional<Boolean> separation) {
    return new WallSpec(
        ref,
        name,
        CavityReader.kind(e),
        e.timber("studs"),
        e.length("every"),
        studsFrom,
        e.length("thickness"),
        e.yesNo("bearing").map(b -> Fact.stated(b, e.where("bearing"))),
        e.choice("fill", Fill.class).map(f -> Fact.stated(f, e.where("fill"))),
        separation,
        e.text("framing").map("balloon"::equals),
        e.text("top-plate").map("single"::equals),
        TraitReader.lengths(e, "blocks-at"),
        TraitReader.traits(e, ref.flatMap(WallRef::face).map(FaceRef::side)),
        e.where());
  }

  /** What only a stated wall is: half as high, or not there. */
  private static WallSpec shaped(Entry e, WallSpec s) {
    boolean open = isOpen(e);
    CavityReader.isOuter(e);
    if (e.has("header") && !open) {
      e.problem(
          "header",
          "kind: open, header: 10 in",
          "",
          "a header hangs over an open side (kind: open)");
    }
    if (e.has("height") && !e.has("between")) {
      e.problem(
          "height",
          "between: [kitchen, den], height: 42 in",
          "",
          "a half-height wall stands between two rooms");
    }
    if (open && !e.has("between")) {
      e.problem(
          "kind", "between: [kitchen, den], kind: open", "", "an open side lies between two rooms");
    }
    if (open) {
      NOT_OPEN.stream()
          .filter(e::has)
          .forEach(k -> e.problem(k, "", "", "an open side has no '" + k + "'"));
    }
    if (e.has("height") && e.yesNo("party").orElse(false)) {
      e.problem("height", "", "", "a wall shared with a neighbour is no half-height wall");
    }
    if (e.has("height") && e.yesNo("bearing").orElse(false)) {
      e.problem("height", "", "", "a half-height wall bears no floor; leave out 'bearing: yes'");
    }
    WallTraits t = s.traits();
    return s.withTraits(
        new WallTraits(
                t.party(),
                t.knockouts(),
                t.layers(),
                e.length("height"),
                e.length("header"),
                t.rows(),
                t.hollow())
            .withBattens(t.battens())
            .withCavity(t.cavity()));
  }

  private static boolean isOpen(Entry e) {
    return e.choice("kind", WallSpec.Kind.class).filter(k -> k == WallSpec.Kind.OPEN).isPresent();
  }

  List<Opening> openings(Entry house) {
    return house.maps("openings", HouseTables.OPENING).stream()
        .flatMap(e -> opening(e).stream())
        .toList();
  }

  /** A round opening is as high as wide: header and sill lie on the square round it. */
  private Fact<Length> head(
      Entry e, String of, String room, Fact<Length> sill, Fact<Length> width) {
    Optional<Fact<Length>> said = e.length("head");
    if (e.text("shape").filter("round"::equals).isEmpty()) {
      return said.orElseGet(() -> defaults.head(of, room));
    }
    Length top = sill.value().plus(width.value());
    if (said.isPresent() && !said.get().value().equals(top)) {
      e.problem(
          "head",
          "no head, or " + top,
          "",
          "a round opening of %s with its sill at %s has its head at %s"
              .formatted(width.value(), sill.value(), top));
    }
    return new Fact<>(top, width.spread(), width.origin(), width.where());
  }

  private static String oneRoom(WallRef r) {
    return r.between().map(WallRef.Between::one).orElse("");
  }

  private Optional<Opening> opening(Entry e) {
    Optional<Opening.Kind> kind = e.kind(Opening.Kind.class);
    Optional<WallRef> wall = Spots.wallRef(e, "this opening");
    Optional<Along> from = e.along("from");
    Optional<Fact<Length>> width = e.length("width");
    Optional<FaceRef> face = wall.flatMap(WallRef::face);
    if (kind.isEmpty() || wall.isEmpty() || from.isEmpty() || width.isEmpty()) {
      return Optional.empty();
    }
    face.ifPresent(f -> Spots.fits(e, "from", f, from.get()));
    String of = Shape.word(kind.get()) + " in " + refText(wall.get());
    String room = face.map(FaceRef::room).orElseGet(() -> oneRoom(wall.get()));
    Fact<Length> sill =
        e.length("sill")
            .orElseGet(
                () ->
                    kind.get() == Opening.Kind.WINDOW
                        ? defaults.sill(of, room)
                        : Fact.assumed(Length.ZERO));
    Fact<Length> head = head(e, of, room, sill, width.get());
    if (head.value().compareTo(sill.value()) <= 0) {
      e.problem(
          e.has("head") ? "head" : "sill",
          "a head above the sill",
          "",
          "this opening's head (%s) is not above its sill (%s)"
              .formatted(head.value(), sill.value()));
    }
    return Optional.of(
        new Opening(kind.get(), wall.get(), from.get(), width.get(), sill, head, e.where()));
  }
}
