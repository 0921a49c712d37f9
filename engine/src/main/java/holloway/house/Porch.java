package holloway.house;

import holloway.units.Length;

/**
 * A roof over an open porch at an outer wall. It stands against the outside of the wall behind a
 * room's face, from {@code from} along it.
 *
 * @param from from an end of that face to the porch's nearer end
 * @param length along the wall, from end to end
 * @param out from the outside of the wall to the porch's outer edge
 * @param height from the floor of the room behind the wall up to its ceiling; to the undersides of
 *     its joists where it has none
 * @param boarded its joists are closed below: boards, panels, a soffit
 * @param pitchRise of its roof, 0 where that is flat
 */
public record Porch(
    String name,
    FaceRef face,
    Along from,
    Fact<Length> length,
    Fact<Length> out,
    Fact<Length> height,
    boolean boarded,
    Cover cover,
    int pitchRise,
    int pitchRun,
    Fact<Timber> joists,
    Fact<Length> every,
    Fact<Run> run,
    Where where) {
  /** Its roof: SHED slopes down from the wall, GABLE has its ridge square to the wall. */
  public enum Cover {
    FLAT,
    SHED,
    GABLE;

    public String word() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }
  }

  /** Which way its ceiling joists lie: out from the wall, or along it. */
  public enum Run {
    OUT,
    ALONG
  }
}
