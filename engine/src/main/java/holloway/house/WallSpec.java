package holloway.house;

import holloway.units.Length;
import java.util.List;
import java.util.Optional;

/**
 * What the person says of one wall, or (as a default) of all outer or inner walls; empty means the
 * default of place and era.
 */
public record WallSpec(
    Optional<WallRef> ref,
    Optional<String> name,
    Optional<Kind> kind,
    Optional<Fact<Timber>> studs,
    Optional<Fact<Length>> every,
    Optional<Along> studsFrom,
    Optional<Fact<Length>> thickness,
    Optional<Fact<Boolean>> bearing,
    Optional<Fact<Fill>> fill,
    Optional<Boolean> garageSeparation,
    Optional<Boolean> balloon,
    Optional<Boolean> singleTopPlate,
    List<Fact<Length>> blocksAt,
    WallTraits traits,
    Where where) {
  /**
   * How a wall is built. SOLID: masonry with plaster on it, no bays. FURRED: masonry with battens
   * and board inside. DABBED: masonry with board stuck on dabs inside. GLAZED: glass from end to
   * end, nothing behind it and nothing fixed in it. OPEN: no wall, two rooms that meet, under a
   * header or under the ceiling as it runs on.
   */
  public enum Kind {
    FRAMED,
    MASONRY,
    FURRED,
    DABBED,
    GLAZED,
    OPEN
  }

  public WallSpec withTraits(WallTraits other) {
    return new WallSpec(
        ref,
        name,
        kind,
        studs,
        every,
        studsFrom,
        thickness,
        bearing,
        fill,
        garageSeparation,
        balloon,
        singleTopPlate,
        blocksAt,
        other,
        where);
  }

  /** A wall with no traits. */
  public WallSpec(
      Optional<WallRef> ref,
      Optional<String> name,
      Optional<Kind> kind,
      Optional<Fact<Timber>> studs,
      Optional<Fact<Length>> every,
      Optional<Along> studsFrom,
      Optional<Fact<Length>> thickness,
      Optional<Fact<Boolean>> bearing,
      Optional<Fact<Fill>> fill,
      Optional<Boolean> garageSeparation,
      Optional<Boolean> balloon,
      Optional<Boolean> singleTopPlate,
      List<Fact<Length>> blocksAt,
      Where where) {
    this(
        ref,
        name,
        kind,
        studs,
        every,
        studsFrom,
        thickness,
        bearing,
        fill,
        garageSeparation,
        balloon,
        singleTopPlate,
        blocksAt,
        WallTraits.NONE,
        where);
  }
}
