package holloway.house;

import holloway.units.Length;

/**
 * A door, window or plain opening; {@code along} is taped from the wall end of a face to the near
 * side of the opening; sill and head above that room's floor.
 */
public record Opening(
    Kind kind,
    WallRef wall,
    Along along,
    Fact<Length> width,
    Fact<Length> sill,
    Fact<Length> head,
    Where where) {
  /** What fills the opening. */
  public enum Kind {
    DOOR,
    WINDOW,
    OPENING
  }
}
