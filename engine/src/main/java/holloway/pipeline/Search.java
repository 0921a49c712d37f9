package holloway.pipeline;

import holloway.solve.Stop;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleSupplier;
import java.util.function.LongSupplier;

/**
 * How long to search.
 *
 * @param gap ends once the plan is proven to be within this part of the least, 0 to 1
 * @param atMost time for the search of one plan, none for as long as it takes
 * @param clock nanoseconds that only ever grow; the caller's, since the engine has no clock
 * @param overtaken whether nobody waits for the answer any more: a search that learns it ends with
 *     a {@link CancellationException}
 */
public record Search(
    Thoroughness thoroughness,
    double gap,
    Optional<Duration> atMost,
    LongSupplier clock,
    BooleanSupplier overtaken) {
  public Search(
      Thoroughness thoroughness, double gap, Optional<Duration> atMost, LongSupplier clock) {
    this(thoroughness, gap, atMost, clock, NEVER);
  }

  private static final BooleanSupplier NEVER = () -> false;

  /** To its own end. */
  public Search(Thoroughness thoroughness) {
    this(thoroughness, 0, Optional.empty(), () -> 0);
  }

  /** The same search, given up as soon as nobody waits for it. */
  Search unless(BooleanSupplier overtakenBy) {
    return new Search(thoroughness, gap, atMost, clock, overtakenBy);
  }

  /** When to end a search that begins now and has this part of the time, 0 to 1. */
  Stop begin(double part) {
    Optional<DoubleSupplier> time = atMost.map(d -> spent(d.toNanos() * part));
    return new Stop(gap, overtaken == NEVER ? time.orElse(Stop.ENDLESS) : watched(time));
  }

  private DoubleSupplier watched(Optional<DoubleSupplier> time) {
    return () -> {
      if (overtaken.getAsBoolean()) {
        throw new CancellationException("overtaken by a later question");
      }
      return time.map(DoubleSupplier::getAsDouble).orElse(0.0);
    };
  }

  private DoubleSupplier spent(double nanos) {
    long began = clock.getAsLong();
    return () -> (clock.getAsLong() - began) / Math.max(1, nanos);
  }
}
