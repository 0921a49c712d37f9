package holloway.house;

import holloway.units.Length;
import java.util.Optional;

/**
 * A storey. {@code above} names the level below it (needed when rooms do not tell); {@code rise} is
 * a taped floor-to-floor height (stairwell). A cellar is a level like another, with {@code
 * ceilingOpen} rooms if its joists are bare.
 */
public record Level(
    String name,
    FloorSpec floor,
    Fact<Length> ceilingHeight,
    Optional<String> above,
    Optional<Fact<Length>> rise,
    Where where,
    Optional<WallSpec> outerWalls,
    Optional<WallSpec> innerWalls,
    Optional<Beside> beside) {
  /**
   * Of another part of the house: this level stands beside that one and not over it, its floor
   * {@code step} higher (lower if below nothing), as taped at the short flight between them.
   */
  public record Beside(String level, Fact<Length> step) {}

  /** A storey of a house that has one floor at each height. */
  public Level(
      String name,
      FloorSpec floor,
      Fact<Length> ceilingHeight,
      Optional<String> above,
      Optional<Fact<Length>> rise,
      Where where,
      Optional<WallSpec> outerWalls,
      Optional<WallSpec> innerWalls) {
    this(name, floor, ceilingHeight, above, rise, where, outerWalls, innerWalls, Optional.empty());
  }

  /** A storey whose walls are like the house's. */
  public Level(
      String name,
      FloorSpec floor,
      Fact<Length> ceilingHeight,
      Optional<String> above,
      Optional<Fact<Length>> rise,
      Where where) {
    this(name, floor, ceilingHeight, above, rise, where, Optional.empty(), Optional.empty());
  }

  /** What is said of the outer or the inner walls of this level alone. */
  public Optional<WallSpec> walls(boolean outer) {
    return outer ? outerWalls : innerWalls;
  }
}
