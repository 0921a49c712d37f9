package holloway.request;

import java.util.Locale;

/** What a plan makes least: work, holes (then work), or route length (then work). */
public enum Profile {
  LEAST_WORK,
  FEWEST_HOLES,
  SHORTEST;

  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
