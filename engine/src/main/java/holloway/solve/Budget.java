package holloway.solve;

/**
 * How long to look, in counted iterations and never in seconds, so that the answer does not depend
 * on the machine.
 *
 * @param orders insertion orders tried for each set of zones
 * @param ruins rounds of ruin and recreate
 * @param boundSteps steps of the bound, all parts of the proof together
 * @param looks rough cap of arcs looked at by each of the two halves, so that a large house gets
 *     fewer rounds instead of hours
 */
public record Budget(int orders, int ruins, int boundSteps, long looks) {
  public static final Budget QUICK = new Budget(2, 60, 400, 100_000_000L);
  public static final Budget USUAL = new Budget(4, 400, 4000, 1_500_000_000L);
  public static final Budget THOROUGH = new Budget(8, 4000, 20_000, 8_000_000_000L);

  public Budget {
    if (orders < 1 || ruins < 0 || boundSteps < 1 || looks < 1) {
      throw new IllegalArgumentException(
          "a budget needs at least one order, one bound step and one look, not %d, %d, %d"
              .formatted(orders, boundSteps, looks));
    }
  }

  /** How many steps may go into trying everything that could still be cheaper. */
  long finish() {
    return looks / 100;
  }

  /** A smaller one: a part of the rounds, steps and looks, with two orders at most. */
  Budget part(double part) {
    return new Budget(
        Math.min(2, orders),
        (int) (ruins * part),
        Math.max(1, (int) (boundSteps * part)),
        Math.max(1, (long) (looks * part)));
  }
}
