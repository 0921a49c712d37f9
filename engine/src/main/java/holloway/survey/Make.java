package holloway.survey;

import holloway.house.Cavity;
import holloway.house.Fact;
import holloway.house.Fill;
import holloway.house.House;
import holloway.house.Timber;
import holloway.house.WallSpec;
import holloway.house.WallTraits;
import holloway.limits.UsualBuild;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/**
 * How one wall is built once what is said of it, the house's default and the era are put together.
 */
record Make(
    Optional<String> name,
    WallSpec.Kind kind,
    Fact<Timber> studs,
    Fact<Length> every,
    Optional<Fact<Length>> thickness,
    Optional<Fact<Boolean>> bearing,
    Fact<Fill> fill,
    Optional<Boolean> garageSeparation,
    boolean balloon,
    boolean singleTopPlate,
    List<Fact<Length>> blocksAt,
    WallTraits traits) {

  /**
   * @param level whose usual walls stand between this wall and the house
   * @param walls what the person says of this wall, the first to state a thing wins
   */
  static Make of(House house, String level, List<WallSpec> walls, boolean outer) {
    WallSpec usual = outer ? house.outerWalls() : house.innerWalls();
    List<WallSpec> said = new ArrayList<>(walls);
    house.levels().stream()
        .filter(l -> l.name().equals(level))
        .flatMap(l -> l.walls(outer).stream())
        .forEach(said::add);
    return new Make(
        first(said, WallSpec::name),
        first(said, usual, WallSpec::kind).orElse(WallSpec.Kind.FRAMED),
        first(said, usual, WallSpec::studs).orElse(Fact.assumed(Makeup.STUD_2X4)),
        first(said, usual, WallSpec::every).orElse(assumed(house, "stud-spacing")),
        thickness(walls, said.subList(walls.size(), said.size()), usual),
        first(said, usual, WallSpec::bearing),
        first(said, usual, WallSpec::fill).orElse(usualFill(house, outer)),
        first(said, WallSpec::garageSeparation),
        outer && first(said, usual, WallSpec::balloon).orElse(house.balloon()),
        first(said, usual, WallSpec::singleTopPlate).orElse(false),
        said.stream().filter(s -> !s.blocksAt().isEmpty()).findFirst().orElse(usual).blocksAt(),
        settled(
            said.stream()
                .map(WallSpec::traits)
                .reduce(WallTraits.NONE, WallTraits::or)
                .or(usual.traits())));
  }

  /** What is said not to be there is as good as not said. */
  private static WallTraits settled(WallTraits t) {
    return t.withCavity(t.cavity().filter(Cavity::there));
  }

  private static <T> Optional<T> first(List<WallSpec> said, Function<WallSpec, Optional<T>> what) {
    return said.stream().map(what).flatMap(Optional::stream).findFirst();
  }

  private static <T> Optional<T> first(
      List<WallSpec> said, WallSpec usual, Function<WallSpec, Optional<T>> what) {
    return first(said, what).or(() -> what.apply(usual));
  }

  private static UsualBuild.Row row(House house, String what) {
    String place = house.place().name().toLowerCase(Locale.ROOT);
    return UsualBuild.of(place, house.built().value()).get(what);
  }

  private static Fact<Fill> usualFill(House house, boolean outer) {
    String fill = row(house, outer ? "outer-fill" : "inner-fill").value();
    return Fact.assumed(Fill.valueOf(fill.toUpperCase(Locale.ROOT).replace('-', '_')));
  }

  private static Fact<Length> assumed(House house, String what) {
    UsualBuild.Row row = row(house, what);
    return Fact.assumed(row.length(), row.deviation());
  }

  /**
   * What is said of the wall itself, else what is usual for one like it: how thick masonry is says
   * nothing of a framed wall, whoever measured it; what the era has, nothing of any other kind.
   */
  private static Optional<Fact<Length>> thickness(
      List<WallSpec> walls, List<WallSpec> level, WallSpec usual) {
    WallSpec.Kind often = usual.kind().orElse(WallSpec.Kind.FRAMED);
    List<WallSpec> nearer = new ArrayList<>(walls);
    nearer.addAll(level);
    WallSpec.Kind kind = first(nearer, WallSpec::kind).orElse(often);
    Optional<Fact<Length>> own = first(walls, WallSpec::thickness);
    Optional<Fact<Length>> there =
        level.stream()
            .filter(s -> isAlike(s.kind().orElse(often), kind))
            .flatMap(s -> s.thickness().stream())
            .findFirst();
    return own.or(() -> there)
        .or(
            () ->
                usual
                    .thickness()
                    .filter(t -> t.isAssumed() ? kind == often : isAlike(kind, often)));
  }

  private static boolean isAlike(WallSpec.Kind a, WallSpec.Kind b) {
    return !(isStone(a) && b == WallSpec.Kind.FRAMED || isStone(b) && a == WallSpec.Kind.FRAMED);
  }

  private static boolean isStone(WallSpec.Kind kind) {
    return switch (kind) {
      case MASONRY, FURRED, DABBED -> true;
      default -> false;
    };
  }

  /** A wall that shows to a neighbour's room is shared unless the person says that it is not. */
  Make besideNeighbours() {
    return with(traits.withParty(traits.party().orElse(true)));
  }

  /** Towards a part of the house with its floors at other heights: taken as shut. */
  Make besideOtherPart() {
    return with(traits.withSplit());
  }

  private Make with(WallTraits other) {
    return new Make(
        name,
        kind,
        studs,
        every,
        thickness,
        bearing,
        fill,
        garageSeparation,
        balloon,
        singleTopPlate,
        blocksAt,
        other);
  }

  Make withStuds(Fact<Timber> other) {
    return new Make(
        name,
        kind,
        other,
        every,
        thickness,
        bearing,
        fill,
        garageSeparation,
        balloon,
        singleTopPlate,
        blocksAt,
        traits);
  }

  /** The void behind board on battens or dabs, stated or taken, nanometres. */
  long behindBoard() {
    long usual = kind == WallSpec.Kind.FURRED ? Makeup.BATTEN : Makeup.DAB;
    return traits.hollow().map(h -> h.value().nm()).orElse(usual);
  }

  /** What lies on its studs is not the usual lining alone: it counts for how thick it is. */
  boolean isLayered() {
    return !traits.layers().isEmpty() || !traits.battens().isEmpty();
  }

  /** Two rows of studs, one behind the other. */
  boolean isDouble() {
    return kind == WallSpec.Kind.FRAMED && traits.isDouble();
  }

  /** Rooms that meet with nothing between them, not even a header. */
  boolean isOpenThrough() {
    return kind == WallSpec.Kind.OPEN && traits.header().isEmpty();
  }

  /** Can both be stretches of one framed strip? */
  boolean isLike(Make o) {
    return kind == o.kind
        && studs.value().depth().equals(o.studs.value().depth())
        && studs.value().kind() == o.studs.value().kind()
        && every.value().equals(o.every.value())
        && fill.value() == o.fill.value()
        && balloon == o.balloon
        && singleTopPlate == o.singleTopPlate
        && blocksAt.equals(o.blocksAt)
        && traits.equals(o.traits)
        && agree(name, o.name)
        && agree(garageSeparation, o.garageSeparation)
        && agree(bearing.map(Fact::value), o.bearing.map(Fact::value));
  }

  private static <T> boolean agree(Optional<T> a, Optional<T> b) {
    return a.isEmpty() || b.isEmpty() || Objects.equals(a, b);
  }

  /** One strip's make when two are alike: what either states. */
  Make and(Make o) {
    return new Make(
        name.or(o::name),
        kind,
        studs.isAssumed() ? o.studs : studs,
        every.isAssumed() ? o.every : every,
        thickness.or(o::thickness),
        bearing.or(o::bearing),
        fill.isAssumed() ? o.fill : fill,
        garageSeparation.or(o::garageSeparation),
        balloon,
        singleTopPlate,
        blocksAt,
        traits);
  }
}
