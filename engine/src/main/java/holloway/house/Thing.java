package holloway.house;

import holloway.units.Length;
import java.util.Locale;

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
    FLUORESCENT_LIGHT,
    TAP,
    TOILET,
    RADIATOR,
    REGISTER,
    RETURN_GRILLE,
    PANEL,
    /** A motor or a transformer. */
    MOTOR,
    FURNITURE,
    DATA_BOX;

    /** True where a power cable ends. */
    public boolean isPower() {
      return switch (this) {
        case SOCKET, SWITCH, LIGHT, FLUORESCENT_LIGHT, PANEL, MOTOR -> true;
        default -> false;
      };
    }

    /** In a sentence. */
    public String words() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }
}
