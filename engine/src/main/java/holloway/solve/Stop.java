package holloway.solve;

import java.util.function.DoubleSupplier;

/**
 * When to end before the budget is spent.
 *
 * @param gap a plan proven to be within this part of the least is good enough, 0 to 1
 * @param spent the part of the time that is gone, 1 when it is up; never falls. Asked between steps
 *     only; an answer that it cut short is not promised to be the same each time
 */
public record Stop(double gap, DoubleSupplier spent) {
  /** Time that is never up. */
  public static final DoubleSupplier ENDLESS = () -> 0;

  public static final Stop NEVER = new Stop(0, ENDLESS);

  public Stop {
    if (!(gap >= 0 && gap < 1)) {
      throw new IllegalArgumentException("a gap is from 0 to below 1, not " + gap);
    }
  }

  boolean timed() {
    return spent != ENDLESS;
  }
}
