package holloway.schedule;

import holloway.units.Length;
import holloway.units.UnitSystem;
import java.util.List;

/**
 * A hole that can be missed is found first with a thin bit and a stiff wire left in it.
 *
 * @param bitMm diameter of the thin bit: 3 mm (1/8 in), behind-the-board P4
 * @param why a side shows nothing to measure from, or the bit may come out too far off
 * @param find how it is found on the other side: by tape lines near which the wire stands out, by
 *     the wire alone in a space that hands reach, or, behind a closed face, with a magnet at the
 *     place that its tape lines lead to, or by feeling for it through the opening there
 * @param searchMm how far from its place the wire may stand: twice the tolerance of the position
 * @param near tape lines on the other side, empty when there are none
 */
public record Pilot(
    String holeId, int bitMm, Why why, Find find, double searchMm, List<Dimension> near) {
  /** What makes it uncertain. */
  public enum Why {
    NOTHING_TO_MEASURE,
    FAR_OFF
  }

  /** How it is found again. */
  public enum Find {
    BY_TAPE,
    BY_SIGHT,
    BY_MAGNET,
    BY_FEEL
  }

  public Pilot {
    near = List.copyOf(near);
  }

  /** What to do, as one sentence. */
  String words(UnitSystem units) {
    String within = units.format(Length.mm(Math.ceil(searchMm)));
    String how =
        switch (find) {
          case BY_TAPE -> "the wire has to stand within %s of where the tapes of the far side lead";
          case BY_SIGHT ->
              "look for the wire on the far side, up to %s from where you expect it, and measure the"
                  + " rest from it";
          case BY_MAGNET ->
              "behind the face find the wire with a magnet, within %s of where the tapes of the far"
                  + " side lead, or by hand through the opening there";
          case BY_FEEL ->
              "feel for the wire through the opening on the far side, up to %s from where you"
                  + " expect it";
        };
    return "drill 1/8 in (3 mm) first and push a stiff wire through; "
        + how.formatted(within)
        + "; else stop and measure again";
  }
}
