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
 * @param run of a flat roof: the way its joists run, if cable may lie between them and nobody gets
 *     in
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
    List<Knee> knees,
    Optional<Direction> run,
    List<Skylight> skylights,
    List<Dormer> dormers,
    Optional<Fact<Length>> rise,
    Where where) {
  /** A roof that comes down on the walls of the rooms it lies over. */
  public Roof(
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
    this(
        name,
        level,
        rooms,
        shape,
        ridge,
        lowSide,
        pitchRise,
        pitchRun,
        eaves,
        frame,
        chord,
        every,
        heel,
        insulation,
        fill,
        boarded,
        hatches,
        joins,
        List.of(),
        Optional.empty(),
        List.of(),
        List.of(),
        Optional.empty(),
        where);
  }

  /**
   * An opening from this roof's attic into another roof's, where both rest on one wall.
   *
   * @param shut somebody looked and there is none: the end is boarded, or the lower roof's
   *     sheathing was left in under the roof that runs onto it; wide and high are nothing then
   * @param valley this roof runs onto the other one, whose slope comes down to that wall below it
   * @param from from an end of that wall to the near side of the opening; else it is in the middle
   * @param high from the tops of the ceiling joists; in a valley that was cut through, wide and
   *     high are nothing: they follow from the two slopes
   */
  public record Join(
      String to,
      Optional<Along> from,
      Length wide,
      Length high,
      boolean shut,
      Optional<Valley> valley,
      Where where) {}

  /** What was done to the lower roof's sheathing where another roof runs onto it. */
  public enum Valley {
    /** Taken out between its rafters, which still stand. */
    CUT_THROUGH,
    /** Left in; a way leads through it only where an opening is stated. */
    LAID_OVER
  }

  /**
   * A low wall of a room under the slope, with the eaves behind it.
   *
   * @param height from the room's floor to where its ceiling begins to slope
   * @param bare its studs stand open on the far side, so that a cable gets in between them from
   *     there; else boarded, or nobody knows
   */
  public record Knee(FaceRef face, Fact<Length> height, boolean bare, Where where) {}

  /**
   * An opening in a room's ceiling with a framed shaft straight up through the roof; centre spot,
   * clear size at the ceiling along east-west and north-south.
   */
  public record Skylight(CeilingSpot at, Length eastWest, Length northSouth, Where where) {}

  /** The face of a room's knee wall on a side; empty if it states none there, or two. */
  public Optional<FaceRef> kneeOf(String room, Side side) {
    List<FaceRef> there =
        knees.stream()
            .map(Knee::face)
            .filter(f -> f.room().equals(room) && f.side() == side)
            .toList();
    return there.size() == 1 ? Optional.of(there.get(0)) : Optional.empty();
  }

  /** The roof's outline in section. */
  public enum Shape {
    GABLE,
    HIP,
    SHED,
    FLAT,
    /** A part of a circle from eave to eave; its ridge is its crown. */
    ARCHED
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
