package holloway.hollow;

import java.util.Locale;

/** A space a cable can lie in. CHANNEL is cut into plaster on masonry and made good. */
public enum HollowKind {
  STUD_BAY,
  JOIST_BAY,
  ATTIC,
  CRAWLSPACE,
  CHASE,
  SOFFIT,
  ROOM_SURFACE,
  OUTSIDE_FACE,
  CONDUIT,
  CHANNEL,
  TRENCH,
  RETURN_AIR;

  /** True where a person's hands go along: cable is laid, not fished. */
  public boolean byHand() {
    return this == ATTIC
        || this == CRAWLSPACE
        || this == ROOM_SURFACE
        || this == OUTSIDE_FACE
        || this == CHANNEL
        || this == TRENCH;
  }

  public String word() {
    return switch (this) {
      case ROOM_SURFACE -> "open room surface";
      case OUTSIDE_FACE -> "outside face";
      case RETURN_AIR -> "return-air space";
      default -> name().toLowerCase(Locale.ROOT).replace('_', ' ');
    };
  }
}
