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
  STAIR;

  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** True for timber that carries load and is judged by the boring rules. */
  public boolean isTimber() {
    return ordinal() <= BLOCKING.ordinal()
        || this == CHORD
        || this == TOP_CHORD
        || this == CEILING_JOIST
        || this == RAFTER;
  }
}
