package holloway.bench;

import holloway.catalog.Fit;
import holloway.limits.MemberMake;
import holloway.limits.RulePack;
import holloway.limits.Verdict;
import holloway.units.Length;
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

/** How long one question to a rule pack takes: every crossing offered asks several. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class LimitsBenchmark {
  @Param({"us", "uk", "none"})
  String place;

  private final Length width = Length.inches(7, 2);
  private final Length depth = Length.inches(37, 4);
  private final Length bit = Length.mm(25L);
  private final Length edge = Length.mm(105L);
  private final Length along = Length.mm(1300L);
  private final Length span = Length.mm(4000L);
  private RulePack pack;

  /** A 25 mm hole in the middle of a 2x10, a third along, is lawful everywhere. */
  @Setup
  public void choose() {
    pack = RulePack.of(place);
    if (!joist().allowed() || widestPlateBore().isEmpty()) {
      throw new IllegalStateException(place + " refuses a small bore");
    }
  }

  @Benchmark
  public Verdict joist() {
    return pack.joistBore(depth, bit, edge, edge, along, span, MemberMake.SOLID);
  }

  @Benchmark
  public OptionalInt widestPlateBore() {
    return pack.largestPlateBore(width, true, false, Fit.BITS_MM);
  }
}
