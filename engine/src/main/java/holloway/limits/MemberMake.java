package holloway.limits;

/**
 * How a member that spans is made, as far as boring cares. SOLID is a sawn joist; RAFTER a sawn
 * rafter; BEAM a header, girder, trimmer beam or purlin; TRUSS any part of a plated truss.
 */
public enum MemberMake {
  SOLID,
  RAFTER,
  BEAM,
  TRUSS,
  I_JOIST,
  OPEN_WEB,
  LVL,
  GLULAM,
  STEEL;

  /** The make in words, with article, for a sentence. */
  public String words() {
    return switch (this) {
      case SOLID -> "a sawn joist";
      case RAFTER -> "a sawn rafter";
      case BEAM -> "a beam or header";
      case TRUSS -> "a plated truss";
      case I_JOIST -> "an I-joist";
      case OPEN_WEB -> "an open-web joist";
      case LVL -> "laminated veneer lumber";
      case GLULAM -> "glued laminated timber";
      case STEEL -> "a steel member";
    };
  }
}
