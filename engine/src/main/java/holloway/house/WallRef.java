package holloway.house;

import java.util.Optional;

/**
 * Which wall: the one between two rooms (ordinal from 1, west or south first), or the one behind a
 * face. Exactly one form is present.
 */
public record WallRef(Optional<Between> between, Optional<FaceRef> face, Where where) {
  /** The wall between two rooms of one level. */
  public record Between(String one, String other, int ordinal) {}
}
