package holloway.house;

import holloway.units.Length;
import java.util.Optional;

/**
 * A lowered part of a room's ceiling with a void over it: boxed along one face, from {@code along}
 * for {@code length} (the whole face unless said), or the whole ceiling. The room's own ceiling
 * height is that of the ceiling above it.
 *
 * @param out how far it stands out from the face, as seen; empty for a whole ceiling
 * @param drop how far its underside hangs below the ceiling, as seen
 */
public record Soffit(
    String name,
    String room,
    Optional<FaceRef> face,
    Optional<Along> along,
    Optional<Fact<Length>> length,
    Optional<Fact<Length>> out,
    Fact<Length> drop,
    Cover cover,
    Where where) {
  /** How its underside is closed: board that has to be cut, or tiles or a panel that come out. */
  public enum Cover {
    BOARD,
    TILES,
    PANEL;

    /** True when a hand gets in anywhere and nothing is made good afterwards. */
    public boolean comesOut() {
      return this != BOARD;
    }
  }
}
