package holloway.house;

import holloway.units.Length;

/**
 * Something seen in a room: it marks what the wall probably holds, covers wall or floor, and serves
 * as a landmark. Centre spot, width across.
 */
public record Thing(Kind kind, WallSpot at, Length width, Length top, Where where) {
  /** What is seen. */
  public enum Kind {
    SOCKET,
    SWITCH,
    LIGHT,
    TAP,
    TOILET,
    RADIATOR,
    REGISTER,
    RETURN_GRILLE,
    PANEL,
    FURNITURE,
    DATA_BOX
  }
}
