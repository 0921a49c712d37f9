package holloway.solve;

import java.util.function.BooleanSupplier;

/**
 * When to end before the budget is spent.
 *
 * @param gap a plan proven to be within this part of the least is good enough, 0 to 1
 * @param timeUp asked between iterations only; an answer that it cut short is not promised to be
 *     the same each time
 */
public record Stop(double gap, BooleanSupplier timeUp) {
  /** Time that is never up. */
  public static final BooleanSupplier ENDLESS = () -> false;

  public static final Stop NEVER = new Stop(0, ENDLESS);

  public Stop {
    if (!(gap >= 0 && gap < 1)) {
      throw new IllegalArgumentException("a gap is from 0 to below 1, not " + gap);
    }
  }

  boolean timed() {
    return timeUp != ENDLESS;
  }
}
