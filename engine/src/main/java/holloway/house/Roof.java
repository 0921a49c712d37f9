package holloway.house;

import holloway.units.Length;
import java.util.List;
import java.util.Optional;

/**
 * A roof over a whole level or over some of its rooms. Pitch is rise over run. {@code ridge} for
 * gable and hip; {@code lowSide} for shed.
 *
 * @param heel height from the top of the plate to the top of the top chord over the outer bearing
 *     face, if stated
 * @param chord section of bottom chord or ceiling joist
 */
public record Roof(
    String name,
    Optional<String> level,
    List<String> rooms,
    Shape shape,
    Direction ridge,
    Optional<Side> lowSide,
    int pitchRise,
    int pitchRun,
    Fact<Length> eaves,
    Frame frame,
    Fact<Timber> chord,
    Fact<Length> every,
    Optional<Fact<Length>> heel,
    Fact<Length> insulation,
    Fill fill,
    boolean boarded,
    List<Hatch> hatches,
    List<Join> joins,
    Where where) {
  /**
   * An opening from this roof's attic into another roof's, where both rest on one wall.
   *
   * @param from from an end of that wall to the near side of the opening; else it is in the middle
   * @param high from the tops of the ceiling joists
   */
  public record Join(String to, Optional<Along> from, Length wide, Length high, Where where) {}

  /** The roof's outline in section. */
  public enum Shape {
    GABLE,
    HIP,
    SHED,
    FLAT
  }

  /** What carries it. Trusses are never bored. */
  public enum Frame {
    TRUSSES,
    RAFTERS
  }

  /**
   * A way into the attic from a room's ceiling; centre spot, clear size along east-west and
   * north-south.
   */
  public record Hatch(CeilingSpot at, Length eastWest, Length northSouth) {}
}
