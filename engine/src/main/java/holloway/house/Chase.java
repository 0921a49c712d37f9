package holloway.house;

import holloway.units.Length;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * An upright shaft. It stands outside the room against the given face ({@code inside} false: in
 * space nothing else accounts for) or boxed into a room's corner or face ({@code inside} true).
 * {@code along} is taped from the face's end to the near side of the shaft.
 *
 * @param from lowest level it stands on; {@code to} is a level, or {@code attic}
 * @param size along the face by away from it, clear inside
 * @param floors what each floor it meets does to it, by the level whose floor it is, or {@code
 *     attic} for the top; absent is UNKNOWN
 */
public record Chase(
    String name,
    FaceRef beside,
    Optional<Along> along,
    boolean inside,
    String from,
    String to,
    Fact<Length> alongFace,
    Fact<Length> awayFromFace,
    List<Contents> contents,
    Map<String, Fact<FloorPass>> floors,
    boolean known,
    Where where) {
  /** What the shaft already holds; a FLUE bans it. */
  public enum Contents {
    PIPE,
    VENT,
    DUCT,
    WIRE,
    FLUE
  }

  /**
   * What a floor does to the shaft. GAP: open round a pipe. UNKNOWN is planned as CLOSED and said
   * so.
   */
  public enum FloorPass {
    OPEN,
    GAP,
    CLOSED,
    UNKNOWN
  }
}
