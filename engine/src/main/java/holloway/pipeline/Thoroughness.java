package holloway.pipeline;

import java.util.Locale;

/**
 * How long to search for a better plan and a better bound; counted in steps, never by the clock.
 */
public enum Thoroughness {
  QUICK,
  USUAL,
  THOROUGH;

  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
