package holloway.schedule;

import java.util.List;

/**
 * What a person needs at one hole, in words.
 *
 * @param bit size and kind of bit
 * @param extension what must make the bit longer, empty when a common one reaches
 * @param sideA tape dimensions from something visible on the side the drill stands; {@code sideB}
 *     the same where the bit comes out
 * @param angle how to hold the drill, empty when square and level
 * @param breakthrough what the bit goes through, and how deep it is when it comes out
 * @param checkFirst what to look for before drilling, empty when nothing
 * @param pilot how a hole that can be missed is found from the other side before the full bit,
 *     empty when it cannot
 * @param behind the space the bit comes out in, what fills it and what stands near
 * @param toleranceMm how far the bit may come out from where it should (one standard deviation)
 */
public record HoleCard(
    String holeId,
    String bit,
    String extension,
    List<String> sideA,
    List<String> sideB,
    String angle,
    String breakthrough,
    String checkFirst,
    String pilot,
    String behind,
    double toleranceMm) {
  public HoleCard {
    sideA = List.copyOf(sideA);
    sideB = List.copyOf(sideB);
  }

  /** A card with the tape dimensions and cautions only. */
  public HoleCard(
      String holeId, List<String> sideA, List<String> sideB, String angle, String checkFirst) {
    this(holeId, "", "", sideA, sideB, angle, "", checkFirst, "", "", 0);
  }
}
