package holloway.hollow;

import java.util.Locale;

/**
 * A space a cable can lie in. CHANNEL is cut into plaster on masonry and made good. SOFFIT is
 * closed with board, LOWERED_CEILING with tiles or a panel that come out. SKIRTING lies behind a
 * board that is taken off and put back. FURRED_BAY and DAB_VOID lie between masonry and board, or
 * FURRED_BAY and SERVICE_VOID, between upright or level battens, before a framed wall's own lining.
 * PORCH_VOID lies between the joists over the boarded ceiling of a porch, outside. BATTEN_VOID lies
 * between joists and a ceiling on straps. OLD_CABLE is the way of a loose cable that draws a new
 * one in. TRENCH and SPAN lead from one building to another.
 */
public enum HollowKind {
  STUD_BAY,
  JOIST_BAY,
  ATTIC,
  CRAWLSPACE,
  CHASE,
  SOFFIT,
  LOWERED_CEILING,
  SKIRTING,
  FURRED_BAY,
  DAB_VOID,
  SERVICE_VOID,
  BATTEN_VOID,
  PORCH_VOID,
  OLD_CABLE,
  ROOM_SURFACE,
  OUTSIDE_FACE,
  CONDUIT,
  CHANNEL,
  TRENCH,
  SPAN,
  RETURN_AIR;

  /** True where a person's hands go along: cable is laid, not fished. */
  public boolean byHand() {
    return this == ATTIC
        || this == CRAWLSPACE
        || this == ROOM_SURFACE
        || this == OUTSIDE_FACE
        || this == CHANNEL
        || this == LOWERED_CEILING
        || this == SKIRTING
        || this == TRENCH
        || this == SPAN;
  }

  /** True for what lies behind the board of one side of a wall, before the wall itself. */
  public boolean isBehindBoard() {
    return this == FURRED_BAY || this == DAB_VOID || this == SERVICE_VOID;
  }

  /** True where a rod goes along lying members, not up and down. */
  public boolean isLying() {
    return this == JOIST_BAY || this == BATTEN_VOID || this == SERVICE_VOID || this == PORCH_VOID;
  }

  /** True where the way is drawn as long as it is, because nobody knows where it runs. */
  public boolean isDrawn() {
    return this == CONDUIT || this == OLD_CABLE || this == TRENCH || this == SPAN;
  }

  public String word() {
    return switch (this) {
      case ROOM_SURFACE -> "open room surface";
      case OUTSIDE_FACE -> "outside face";
      case RETURN_AIR -> "return-air space";
      case BATTEN_VOID -> "void between battens";
      case PORCH_VOID -> "void over a porch ceiling";
      case DAB_VOID -> "void behind dabbed board";
      case SERVICE_VOID -> "void between level battens";
      case SPAN -> "overhead span";
      default -> name().toLowerCase(Locale.ROOT).replace('_', ' ');
    };
  }
}
