package holloway.house;

import holloway.units.Length;
import java.util.List;
import java.util.Optional;

/**
 * A room by what a tape measures. Exactly one of {@code size} and {@code outline} is present.
 *
 * @param elevation finished floor relative to its level's floor, negative when lower (a garage
 *     slab)
 * @param standing whether a person works in it
 * @param vaulted the ceiling follows the rafters of the roof over it: no attic there
 * @param overhead layers of the ceiling, where they are stated
 * @param plain cables may show here at no dislike (garage, cellar, store)
 */
public record Room(
    String name,
    String level,
    Optional<Size> size,
    List<Corner> outline,
    Placing placing,
    Optional<FloorSpec> floor,
    Optional<Fact<Length>> elevation,
    Optional<Fact<Length>> ceilingHeight,
    Lining walls,
    Lining ceiling,
    Overhead overhead,
    boolean plain,
    boolean garage,
    boolean vaulted,
    Standing standing,
    Where where) {
  /** A room of ours with a level ceiling. */
  public Room(
      String name,
      String level,
      Optional<Size> size,
      List<Corner> outline,
      Placing placing,
      Optional<FloorSpec> floor,
      Optional<Fact<Length>> elevation,
      Optional<Fact<Length>> ceilingHeight,
      Lining walls,
      Lining ceiling,
      boolean plain,
      boolean garage,
      Where where) {
    this(
        name,
        level,
        size,
        outline,
        placing,
        floor,
        elevation,
        ceilingHeight,
        walls,
        ceiling,
        Overhead.NONE,
        plain,
        garage,
        false,
        Standing.OURS,
        where);
  }

  /** The same room with its corners and its place said otherwise. */
  public Room with(List<Corner> otherOutline, Placing otherPlacing) {
    return new Room(
        name,
        level,
        size,
        otherOutline,
        otherPlacing,
        floor,
        elevation,
        ceilingHeight,
        walls,
        ceiling,
        overhead,
        plain,
        garage,
        vaulted,
        standing,
        where);
  }

  /** Clear inside size, east-west by north-south, board to board. */
  public record Size(Fact<Length> eastWest, Fact<Length> northSouth) {}

  /** A corner of an outline, relative to the outline's own origin; x east, y north. */
  public record Corner(Fact<Length> x, Fact<Length> y) {}

  /** How the room is placed; {@link Placing.Free} for the first room of the house. */
  public sealed interface Placing {
    /** The first room: its south-west corner is the start of the survey. */
    record Free() implements Placing {}

    /** The first room of a building that stands apart, nobody knows where. */
    record Apart(Where where) implements Placing {}

    /**
     * The south-west corner of the room's box at a position relative to the first room's south-west
     * corner.
     */
    record At(Fact<Length> x, Fact<Length> y, Where where) implements Placing {}

    /**
     * Beside a room: {@code side} of {@code neighbour} faces this room (EAST: this room lies east
     * of it). {@code align} names the side whose visible faces are in line, with {@code shift}
     * towards north or east when they are not.
     */
    record Beside(String neighbour, Side side, Side align, Fact<Length> shift, Where where)
        implements Placing {}

    /**
     * On the level above (or below) a room, faces on the two {@code align} sides in line, shifted
     * by eastward and northward amounts. A taped tie has origin MEASURED; else ASSUMED.
     */
    record Stacked(
        String neighbour,
        boolean above,
        Side alignNorthSouth,
        Side alignEastWest,
        Fact<Length> shiftEast,
        Fact<Length> shiftNorth,
        Where where)
        implements Placing {}
  }
}
