package holloway.session;

import java.util.Locale;

/**
 * A slice of the house: what lies between two planes is shown, the rest is not.
 *
 * @param at middle of the slice, nanometres from the west or south side or above the lowest floor
 * @param thick nanometres
 */
public record Cut(Way way, long at, long thick) {
  /** From where the distance is measured: the slice stands square to that way. */
  public enum Way {
    WEST,
    SOUTH,
    FLOOR;

    public Way next() {
      return values()[(ordinal() + 1) % values().length];
    }

    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** A slice of the usual thickness, two feet, or a foot of height. */
  public static Cut usual(Way way, long at) {
    return new Cut(way, at, way == Way.FLOOR ? 304_800_000L : 609_600_000L);
  }

  public Cut {
    if (thick <= 0) {
      throw new IllegalArgumentException("a slice of " + thick + " nanometres");
    }
  }

  public Cut moved(long by) {
    return new Cut(way, at + by, thick);
  }

  /** Thinner or thicker, from 5 cm to 5 m. */
  public Cut thicker(double times) {
    long next = Math.round(thick * times);
    return new Cut(way, at, Math.max(50_000_000L, Math.min(5_000_000_000L, next)));
  }

  public long low() {
    return at - thick / 2;
  }

  public long high() {
    return at + thick / 2;
  }
}
