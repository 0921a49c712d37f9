package holloway.pipeline;

import holloway.solve.Stop;
import java.time.Duration;
import java.util.Optional;
import java.util.function.DoubleSupplier;
import java.util.function.LongSupplier;

/**
 * How long to search.
 *
 * @param gap ends once the plan is proven to be within this part of the least, 0 to 1
 * @param atMost time for the search of one plan, none for as long as it takes
 * @param clock nanoseconds that only ever grow; the caller's, since the engine has no clock
 */
public record Search(
    Thoroughness thoroughness, double gap, Optional<Duration> atMost, LongSupplier clock) {
  /** To its own end. */
  public Search(Thoroughness thoroughness) {
    this(thoroughness, 0, Optional.empty(), () -> 0);
  }

  /** When to end a search that begins now and has its part of the time, a whole divided so. */
  Stop begin(int parts) {
    return new Stop(gap, atMost.map(d -> spent(d.toNanos() / (double) parts)).orElse(Stop.ENDLESS));
  }

  private DoubleSupplier spent(double nanos) {
    long began = clock.getAsLong();
    return () -> (clock.getAsLong() - began) / Math.max(1, nanos);
  }
}
