package holloway.hollow;

import java.util.Locale;

/** A way of working that a person can allow or leave out as a whole. */
public enum Way {
  ATTIC,
  CHASE,
  UNDER_FLOOR,
  OUTSIDE,
  SURFACE,
  JOIST_BAYS;

  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  public int bit() {
    return 1 << ordinal();
  }
}
