package holloway.schedule;

import holloway.geometry.Frame.Axis;
import holloway.geometry.Point3;
import holloway.units.Length;
import holloway.units.UnitSystem;

/**
 * One straight tape line: from a landmark, so many nanometres in a direction, to the hole's axis.
 *
 * @param landmark what is seen, in words
 * @param at a point of the landmark
 */
public record Dimension(String landmark, Point3 at, Axis towards, long nm) {
  public String text(UnitSystem units) {
    return units.format(new Length(nm)) + " from " + landmark;
  }

  /** Where the tape ends. */
  Point3 end() {
    return Lines.walk(at, towards, nm);
  }
}
