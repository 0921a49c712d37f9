package holloway.schedule;

import holloway.geometry.Point3;
import java.util.List;

/**
 * The tape lines of one hole as they lie in the house, for pictures; the words and figures are
 * those of its {@link HoleCard}.
 *
 * @param a end of the hole's axis where the drill stands, {@code b} where the bit comes out
 * @param sideA lines taken at {@code a}, none where nothing can be seen there; {@code sideB}
 *     likewise
 */
public record Tapes(String holeId, Point3 a, Point3 b, List<Line> sideA, List<Line> sideB) {
  /**
   * One line.
   *
   * @param from a point of the landmark
   * @param to where the tape ends: on the hole's axis, or beside it on the face that is measured on
   * @param nm what the tape shows
   * @param landmark in words
   */
  public record Line(Point3 from, Point3 to, long nm, String landmark) {}

  public Tapes {
    sideA = List.copyOf(sideA);
    sideB = List.copyOf(sideB);
  }
}
