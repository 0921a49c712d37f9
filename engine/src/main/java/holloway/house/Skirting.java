package holloway.house;

import holloway.units.Length;
import java.util.List;

/**
 * Skirting (baseboard) of a room that may be taken off and put back, on the sides named; a side
 * that is not named keeps its own.
 */
public record Skirting(String room, List<Side> sides, Fact<Length> height, Where where) {
  public Skirting {
    sides = List.copyOf(sides);
  }
}
