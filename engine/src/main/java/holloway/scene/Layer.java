package holloway.scene;

import holloway.framing.MemberKind;
import java.util.Locale;

/** What can be shown and hidden together. */
public enum Layer {
  FRAMING,
  FINISH,
  FLOOR,
  ROOF,
  MASONRY,
  OBSTACLE,
  /** Cladding. */
  OUTSIDE,
  /** Never entered: a neighbour's side. */
  NOT_OURS;

  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  static Layer of(MemberKind kind) {
    return switch (kind) {
      case BOTTOM_PLATE,
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
              CHORD,
              CEILING_JOIST,
              BATTEN,
              BEAM,
              LEDGER ->
          FRAMING;
      case TOP_CHORD, RAFTER -> ROOF;
      case LINING, GLASS -> FINISH;
      case SUBFLOOR, SLAB, STAIR -> FLOOR;
      case CLADDING -> OUTSIDE;
      case MASONRY -> MASONRY;
      case OBSTACLE -> OBSTACLE;
      case NOT_OURS -> NOT_OURS;
    };
  }
}
