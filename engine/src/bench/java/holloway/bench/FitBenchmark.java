package holloway.bench;

import holloway.catalog.Cable;
import holloway.catalog.Fit;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** How long it takes to size a hole for a set of cables: the joint plan asks this all the time. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class FitBenchmark {
  @Param({"1", "4", "10"})
  int cables;

  private List<Cable> set;

  /** Mixed kinds; the answer is checked before it is timed. */
  @Setup
  public void fill() {
    set = new ArrayList<>();
    for (int i = 0; i < cables; i++) {
      set.add(Cable.get(i % 3 == 2 ? "om4" : "cat6"));
    }
    OptionalInt bit = smallestBit();
    if (bit.isEmpty() || !Fit.fits(set, bit.getAsInt())) {
      throw new IllegalStateException("no bit takes " + cables + " cables");
    }
  }

  @Benchmark
  public OptionalInt smallestBit() {
    return Fit.smallestBit(set, 51);
  }
}
