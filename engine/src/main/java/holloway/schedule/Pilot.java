package holloway.schedule;

import holloway.hollow.Hollow;
import holloway.units.Length;
import holloway.units.UnitSystem;
import java.util.List;
import java.util.Optional;

/**
 * A hole that can be missed is found first with a thin bit and a stiff wire left in it.
 *
 * @param bitMm diameter of the thin bit: 3 mm (1/8 in), behind-the-board P4; 6 mm (1/4 in) in
 *     masonry, where no thinner bit is as long as a wall is thick (common practice, no published
 *     source)
 * @param why a side shows nothing to measure from, or the bit may come out too far off
 * @param find how it is found on the other side: by tape lines near which the wire stands out, by
 *     the wire alone in a space that hands reach, or, behind a closed face, with a magnet at the
 *     place that its tape lines lead to, or by feeling for it through the opening there; or it is
 *     bored from a room, where the drill itself stands outside and nothing there can be taped
 * @param searchMm how far from its place the wire may stand: twice the tolerance of the position
 * @param near tape lines on the other side, empty when there are none
 * @param from the place inside that the pilot is bored from when that is not where the drill stands
 */
public record Pilot(
    String holeId,
    int bitMm,
    Why why,
    Find find,
    double searchMm,
    List<Dimension> near,
    Optional<From> from) {
  /** It goes through brick, block or stone, with a hammer drill. */
  public boolean isMasonry() {
    return bitMm > Pilots.BIT_MM;
  }

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
    BY_FEEL,
    FROM_INSIDE
  }

  /**
   * Where a pilot is bored from that comes out where the drill stands.
   *
   * @param words a room's name, or what kind of space it is
   * @param hollow id of that space; empty for a room
   */
  public record From(String words, Optional<String> hollow) {
    static From room(String name) {
      return new From(name, Optional.empty());
    }

    static From space(Hollow hollow) {
      return new From(hollow.kind().word(), Optional.of(hollow.id()));
    }
  }

  public Pilot {
    near = List.copyOf(near);
  }

  /** What to do, as one sentence. */
  String words(UnitSystem units) {
    String within = units.format(Length.mm(Math.ceil(searchMm)));
    String bit = bit(bitMm, units);
    String first = "drill %s first and push a stiff wire through; ".formatted(bit);
    return words(first, bit).formatted(within) + "; else stop and measure again";
  }

  /** A thin bit by the reader's own units first, the other in brackets. */
  static String bit(int bitMm, UnitSystem units) {
    String inches = bitMm == Pilots.BIT_MM ? "1/8 in" : "1/4 in";
    String mm = bitMm + " mm";
    return units == UnitSystem.METRIC ? mm + " (" + inches + ")" : inches + " (" + mm + ")";
  }

  private String words(String first, String bit) {
    return switch (find) {
      case BY_TAPE ->
          first + "the wire has to stand within %s of where the tapes of the far side lead";
      case BY_SIGHT ->
          first
              + "look for the wire on the far side, up to %s from where you expect it, and measure"
              + " the rest from it";
      case BY_MAGNET ->
          first
              + "behind the face find the wire with a magnet, within %s of where the tapes of the"
              + " far side lead, or by hand through the opening there";
      case BY_FEEL ->
          first
              + "feel for the wire through the opening on the far side, up to %s from where you"
              + " expect it";
      case FROM_INSIDE ->
          ("from the " + from.orElseThrow().words() + " drill " + bit)
              + " straight out where the tapes of the far side lead, and push a stiff wire through;"
              + " outside it has to stand within %s of where you expect it, and the hole is bored"
              + " there";
    };
  }
}
