package holloway.session;

import java.util.Locale;

/** How much of the finishes is off: all on, to look through, or off altogether. */
public enum Peel {
  FINISHED,
  VEILED,
  FRAMING;

  /** The next deeper one; the deepest stays. */
  public Peel deeper() {
    return values()[Math.min(ordinal() + 1, values().length - 1)];
  }

  /** The next shallower one; the shallowest stays. */
  public Peel shallower() {
    return values()[Math.max(ordinal() - 1, 0)];
  }

  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
