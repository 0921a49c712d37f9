package holloway.house;

import holloway.units.Length;

/**
 * A section as used: thickness (the narrow way) by depth. Kinds other than SOLID must never be
 * bored (C1-10) except an I-joist web knockout.
 *
 * @param name as the person wrote it, for example {@code 2x10} or {@code 47x170}
 */
public record Timber(String name, Length thickness, Length depth, Kind kind) {
  /** How the member is made. */
  public enum Kind {
    SOLID,
    I_JOIST,
    OPEN_WEB,
    STEEL
  }

  public static Timber solid(String name, Length thickness, Length depth) {
    return new Timber(name, thickness, depth, Kind.SOLID);
  }
}
