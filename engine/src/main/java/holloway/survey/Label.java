package holloway.survey;

import holloway.house.Where;

/**
 * How a person knows an observation again.
 *
 * @param text what, how long, and file and line
 */
record Label(String text, Where where, Sort sort) {

  /** What kind of statement it is, the most easily wrong first. */
  enum Sort {
    /** Somebody read a tape. */
    TAPED,
    /** A wall or floor of a thickness stated or taken. */
    THICKNESS,
    /** Faces or storeys said to be in line, or a shift nobody taped. */
    IN_LINE
  }

  static Label taped(String text, Where where) {
    return new Label(text, where, Sort.TAPED);
  }

  static Label thickness(String text, Where where) {
    return new Label(text, where, Sort.THICKNESS);
  }

  static Label inLine(String text, Where where) {
    return new Label(text, where, Sort.IN_LINE);
  }
}
