package holloway.framing;

import java.util.Locale;

/** What a solid piece of the house is. */
public enum MemberKind {
  BOTTOM_PLATE,
  TOP_PLATE,
  STUD,
  KING_STUD,
  JACK_STUD,
  CRIPPLE,
  HEADER,
  SILL,
  FIRE_BLOCK,
  POST,
  JOIST,
  RIM,
  BLOCKING,
  SUBFLOOR,
  CHORD,
  TOP_CHORD,
  CEILING_JOIST,
  RAFTER,
  BATTEN,
  LINING,
  CLADDING,
  MASONRY,
  SLAB,
  OBSTACLE,
  STAIR,
  /** A glazed wall: never bored, nothing fixed in it. */
  GLASS,
  /** A stated beam, of timber, steel or concrete: never bored. */
  BEAM,
  /** The timber on a wall that a porch's joists hang on. */
  LEDGER,
  /** Room that is somebody else's, or the face of a wall shared with them: never entered. */
  NOT_OURS;

  public String word() {
    if (this == NOT_OURS) {
      return "somebody else's side";
    }
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** True for timber that carries load and is judged by the boring rules. */
  public boolean isTimber() {
    return ordinal() <= BLOCKING.ordinal()
        || this == CHORD
        || this == TOP_CHORD
        || this == CEILING_JOIST
        || this == RAFTER
        || this == LEDGER;
  }
}
