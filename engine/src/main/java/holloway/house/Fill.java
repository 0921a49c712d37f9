package holloway.house;

import java.util.Locale;

/** What lies in a hollow; foam shuts it, unknown is planned as unfaced batt and said so. */
public enum Fill {
  EMPTY,
  FACED_BATT,
  UNFACED_BATT,
  LOOSE,
  DENSE_PACKED,
  FOAM,
  UNKNOWN;

  /** For a person: the word of the house file without its hyphen. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
