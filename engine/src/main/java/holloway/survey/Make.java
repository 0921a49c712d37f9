package holloway.survey;

import holloway.house.Fact;
import holloway.house.Fill;
import holloway.house.House;
import holloway.house.RulePlace;
import holloway.house.Timber;
import holloway.house.WallSpec;
import holloway.house.WallTraits;
import holloway.units.Length;
import java.util.List;
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

  /** US batts in outer walls are the rule from 1970 on (behind-the-board J12, J13). */
  private static final int BATTS_FROM = 1970;

  /**
   * @param said what the person says of this wall, the first to state a thing wins
   */
  static Make of(House house, List<WallSpec> said, boolean outer) {
    WallSpec usual = outer ? house.outerWalls() : house.innerWalls();
    return new Make(
        first(said, WallSpec::name),
        first(said, usual, WallSpec::kind).orElse(WallSpec.Kind.FRAMED),
        first(said, usual, WallSpec::studs).orElse(Fact.assumed(Makeup.STUD_2X4)),
        first(said, usual, WallSpec::every).orElse(Fact.assumed(usualSpacing(house))),
        first(said, usual, WallSpec::thickness),
        first(said, usual, WallSpec::bearing),
        first(said, usual, WallSpec::fill).orElse(Fact.assumed(usualFill(house, outer))),
        first(said, WallSpec::garageSeparation),
        outer && first(said, usual, WallSpec::balloon).orElse(house.balloon()),
        first(said, usual, WallSpec::singleTopPlate).orElse(false),
        said.stream().filter(s -> !s.blocksAt().isEmpty()).findFirst().orElse(usual).blocksAt(),
        said.stream()
            .map(WallSpec::traits)
            .reduce(WallTraits.NONE, WallTraits::or)
            .or(usual.traits()));
  }

  private static <T> Optional<T> first(List<WallSpec> said, Function<WallSpec, Optional<T>> what) {
    return said.stream().map(what).flatMap(Optional::stream).findFirst();
  }

  private static <T> Optional<T> first(
      List<WallSpec> said, WallSpec usual, Function<WallSpec, Optional<T>> what) {
    return first(said, what).or(() -> what.apply(usual));
  }

  /** 16 in (trade-facts D6); 400 mm in the UK (D7). */
  private static Length usualSpacing(House house) {
    return house.place() == RulePlace.UK ? Length.mm(400) : Length.inches(16);
  }

  private static Fill usualFill(House house, boolean outer) {
    if (!outer) {
      return Fill.EMPTY;
    }
    return house.built().value() >= BATTS_FROM ? Fill.FACED_BATT : Fill.UNKNOWN;
  }

  /** A wall that shows to a neighbour's room is shared unless the person says that it is not. */
  Make besideNeighbours() {
    WallTraits shared = traits.withParty(traits.party().orElse(true));
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
        shared);
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
