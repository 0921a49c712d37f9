package holloway.schedule;

import java.util.List;

/**
 * What one side of a hole looks like, as flat shapes in millimetres from the hole's axis: right and
 * up as somebody sees it who looks at the hole from that side.
 *
 * @param kind {@code face}: looking along the bore at what is bored; {@code section}: cut through
 *     the bore, the side it is seen from towards the foot (for an upright bore as it stands)
 * @param drillSide true where the drill stands, false where the bit comes out
 * @param right where right is: a compass word
 * @param up the same
 * @param solids what is cut
 * @param tapes both tape lines of a face view; those that lie in the cut of a section
 * @param bore the axis from where the bit goes in to where it comes out; one point in a face view
 * @param diameterMm of the bit
 */
public record HoleView(
    String kind,
    boolean drillSide,
    String right,
    String up,
    List<Shape> solids,
    List<Tape> tapes,
    List<double[]> bore,
    double diameterMm) {
  /**
   * @param what the member's kind
   * @param bored it is what the hole goes through
   * @param near it stands out towards who looks; in a section everything is cut and nothing near
   */
  public record Shape(String what, boolean bored, boolean near, List<double[]> corners) {}

  /** A tape line from a landmark to the hole. */
  public record Tape(String landmark, long nm, double[] from, double[] to) {}

  public HoleView {
    solids = List.copyOf(solids);
    tapes = List.copyOf(tapes);
    bore = List.copyOf(bore);
  }
}
