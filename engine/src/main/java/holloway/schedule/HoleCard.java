package holloway.schedule;

import java.util.List;

/**
 * What a person needs at one hole, in words.
 *
 * @param sideA tape dimensions from something visible on the side the drill stands; {@code sideB}
 *     the same where the bit comes out
 * @param angle how to hold the drill, empty when square
 * @param checkFirst what to look for before drilling, empty when nothing
 */
public record HoleCard(
    String holeId, List<String> sideA, List<String> sideB, String angle, String checkFirst) {
  public HoleCard {
    sideA = List.copyOf(sideA);
    sideB = List.copyOf(sideB);
  }
}
