package holloway.survey;

import holloway.units.Length;
import java.util.List;

/**
 * A loop that does not close: by how much, what its own spread would allow, and the measurements in
 * it, in order.
 *
 * @param tolerance three times the spread of the whole loop
 * @param steps the same measurements with value, spread and running sum; the last sum is the miss
 * @param suspects what the test on residuals points at; several of one group cannot be told apart
 * @param verdict the suspects in words
 */
public record Misclosure(
    String where,
    Length size,
    Length tolerance,
    List<String> measurements,
    List<Step> steps,
    List<Suspect> suspects,
    List<String> verdict) {
  /**
   * No house is planned on a loop that misses by more than a framed wall is thick, since then
   * nobody can say which side of a wall a hole comes out on; from experience.
   */
  static final long LEAST_IMPOSSIBLE = Makeup.WALL_2X4;

  /** Nor is a miss within ten of the loop's own spreads taken for impossible; from experience. */
  private static final double IMPOSSIBLE_SPREADS = 10;

  private static final double TOLERATED_SPREADS = 3;

  public Misclosure {
    measurements = List.copyOf(measurements);
    steps = List.copyOf(steps);
    suspects = List.copyOf(suspects);
    verdict = List.copyOf(verdict);
  }

  /** Without a walk and a verdict. */
  public Misclosure(String where, Length size, Length tolerance, List<String> measurements) {
    this(where, size, tolerance, measurements, List.of(), List.of(), List.of());
  }

  /**
   * One measurement that may be wrong.
   *
   * @param group suspects of one group cannot be told apart; the group found first is the likeliest
   * @param error by how much it would be too large; negative when too small
   * @param w standardised residual; over 3.29 in size it is suspected
   * @param redundancy share of an error in it that would show
   */
  public record Suspect(int group, String measurement, Length error, double w, double redundancy) {}

  /** Too much for any plan: the house is refused. */
  public boolean isImpossible() {
    double limit =
        Math.max(LEAST_IMPOSSIBLE, tolerance.nm() * IMPOSSIBLE_SPREADS / TOLERATED_SPREADS);
    return size.nm() > limit;
  }

  /** {@code error} when the house is refused for it, else {@code measure-again}. */
  public String severity() {
    return isImpossible() ? "error" : "measure-again";
  }
}
