package holloway.finding;

import java.util.Locale;

/**
 * How binding a finding is: law of a code, a standard's or maker's limit, good practice, or plain
 * information.
 */
public enum Severity {
  LAW,
  STANDARD,
  PRACTICE,
  NOTE;

  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
