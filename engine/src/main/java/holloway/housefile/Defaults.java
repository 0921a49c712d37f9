package holloway.housefile;

import holloway.house.Assumption;
import holloway.house.Fact;
import holloway.house.Fill;
import holloway.house.Lining;
import holloway.house.Timber;
import holloway.house.WallSpec;
import holloway.limits.UsualBuild;
import holloway.units.Length;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * What is taken when the person does not say: first {@code usual} of the level, then {@code usual}
 * of the house, then the table of {@link UsualBuild}. What comes from the table is a {@link
 * Fact#assumed}, and every row that was used is kept, to be listed.
 */
final class Defaults {
  private final Era era;
  private final UsualBuild table;
  private final Usual usual;
  private final TreeSet<Assumption> assumed = new TreeSet<>();

  Defaults(Era era, Usual usual) {
    this.era = era;
    this.table = UsualBuild.of(Shape.word(era.place()), era.built());
    this.usual = usual;
  }

  List<Assumption> assumed() {
    return List.copyOf(assumed);
  }

  /**
   * A row of the table, taken for something.
   *
   * @param of what it is taken for, in the words of the list
   */
  private UsualBuild.Row taken(String what, String of) {
    UsualBuild.Row row = table.get(what);
    assumed.add(new Assumption(what, of, row.value(), row.cited(), row.instead()));
    return row;
  }

  private <T> Fact<T> fact(String what, String of, Function<String, T> read) {
    UsualBuild.Row row = taken(what, of);
    return Fact.assumed(read.apply(row.value()), row.deviation());
  }

  private Fact<Length> length(String what, String of, String level) {
    return usual
        .first(level, what, e -> e.length(what))
        .orElseGet(
            () -> {
              UsualBuild.Row row = taken(what, of);
              return Fact.assumed(row.length(), row.deviation());
            });
  }

  private Fact<Timber> timber(String what, String of) {
    return fact(what, of, t -> Timbers.parse(t, era.built()));
  }

  private <E extends Enum<E>> E word(String what, String of, Class<E> type) {
    return Entry.choiceOf(taken(what, of).value(), type).orElseThrow();
  }

  private boolean yes(String what, String of) {
    return taken(what, of).value().equals("yes");
  }

  /** Balloon framing is never assumed: it would be more space than anybody knows of. */
  boolean balloon() {
    return taken("framing", "all outer walls").value().equals("balloon");
  }

  Lining wallLining(String room) {
    return lining("finish", room);
  }

  Lining ceilingLining(String room) {
    return lining("ceiling", room);
  }

  private Lining lining(String what, String room) {
    return usual
        .first(usual.levelOf(room), what, e -> e.choice(what, Lining.class))
        .orElseGet(() -> word(what, room, Lining.class));
  }

  Fact<Length> ceilingHeight(String level) {
    return length("ceiling-height", "level " + level, "");
  }

  Fact<Timber> joists(Timber.Kind kind, String of) {
    Fact<Timber> f =
        usual.first("", "joists", e -> e.timber("joists")).orElseGet(() -> timber("joists", of));
    Timber t = f.value();
    Timber made = new Timber(t.name(), t.thickness(), t.depth(), kind);
    return new Fact<>(made, f.spread(), f.origin(), f.where());
  }

  Fact<Length> joistSpacing(String of) {
    return length("joist-spacing", of, "");
  }

  boolean liftingBoards(String of) {
    return yes("boards", of);
  }

  Fill floorFill(boolean overCrawlspace, String of) {
    return word(overCrawlspace ? "crawlspace-fill" : "floor-fill", of, Fill.class);
  }

  Fact<Length> crawlClearance(String of) {
    return length("crawl-clearance", of, "");
  }

  Fact<Timber> chord(boolean trusses, String roof) {
    return timber(trusses ? "truss-chord" : "ceiling-joist", roof);
  }

  Fact<Length> chordSpacing(boolean trusses, String roof) {
    return length(trusses ? "truss-spacing" : "ceiling-joist-spacing", roof, "");
  }

  /** Under a porch's roof joists are taken to be those of a ceiling. */
  Fact<Timber> porchJoists(String porch) {
    UsualBuild.Row row = porch("ceiling-joist", "joists", porch);
    return Fact.assumed(Timbers.parse(row.value(), era.built()), row.deviation());
  }

  Fact<Length> porchSpacing(String porch) {
    UsualBuild.Row row = porch("ceiling-joist-spacing", "every", porch);
    return Fact.assumed(row.length(), row.deviation());
  }

  private UsualBuild.Row porch(String what, String key, String porch) {
    UsualBuild.Row row = table.get(what);
    assumed.add(new Assumption(what, porch, row.value(), row.cited(), "porches: " + key + ": ..."));
    return row;
  }

  Fact<Length> eaves(String roof) {
    return length("eaves", roof, "");
  }

  Fact<Length> atticInsulation(String roof) {
    return length("attic-insulation", roof, "");
  }

  Fact<Length> head(String of, String room) {
    return length("head", of, usual.levelOf(room));
  }

  Fact<Length> sill(String of, String room) {
    return length("sill", of, usual.levelOf(room));
  }

  /** The height of a box; nothing is taken for one that says its own. */
  Fact<Length> heightUnlessSaid(Entry e, String of) {
    if (e.has("height")) {
      return Fact.assumed(Length.ZERO);
    }
    String level = usual.levelOf(e.text("in").orElse(""));
    return length("outlet-height", of, level);
  }

  /** All outer or all inner walls, whole, from what the person said and the table. */
  WallSpec complete(WallSpec said, boolean outer) {
    String side = outer ? "outer-" : "inner-";
    String of = side.replace('-', ' ') + "walls";
    WallSpec.Kind kind = said.kind().orElseGet(() -> word(side + "kind", of, WallSpec.Kind.class));
    boolean framed = kind == WallSpec.Kind.FRAMED;
    return new WallSpec(
        Optional.empty(),
        said.name(),
        Optional.of(kind),
        Optional.of(said.studs().orElseGet(() -> timber(side + "studs", of))),
        Optional.of(said.every().orElseGet(() -> length("stud-spacing", of, ""))),
        said.studsFrom(),
        said.thickness()
            .or(() -> framed ? Optional.empty() : Optional.of(length(side + "masonry", of, ""))),
        said.bearing()
            .or(
                () ->
                    outer
                        ? Optional.of(fact("outer-bearing", of, "yes"::equals))
                        : Optional.empty()),
        Optional.of(said.fill().orElseGet(() -> fill(side, of))),
        said.garageSeparation(),
        said.balloon(),
        said.singleTopPlate()
            .or(() -> Optional.of(taken(side + "top-plate", of).value().equals("single"))),
        List.copyOf(said.blocksAt()),
        said.traits(),
        said.where());
  }

  private Fact<Fill> fill(String side, String of) {
    return Fact.assumed(word(side + "fill", of, Fill.class));
  }
}
