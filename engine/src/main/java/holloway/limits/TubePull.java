package holloway.limits;

import holloway.units.Length;

/** What cable is drawn through between two places where a hand has it (A6-11, A6-12). */
public final class TubePull {
  private static final int QUARTER = 90;

  private TubePull() {}

  public static boolean tooLong(Length part) {
    return part.compareTo(SignalFigures.TUBE_LONG.length()) > 0;
  }

  /**
   * @param degrees of all turns of the part
   */
  public static boolean tooBent(int degrees) {
    return degrees > SignalFigures.TUBE_BENDS.value() * QUARTER;
  }
}
