package holloway.survey;

/**
 * Weighted least squares over one network: the corrections to the start values with the least sum
 * of squared residuals over squared spreads, one unknown held. Rounded once, to the micrometre.
 *
 * @param position adjusted positions in nanometres
 * @param spread one standard deviation of each position against the held one, nanometres
 */
record Adjustment(long[] position, long[] spread) {
  private static final long ROUND = 1000;

  static Adjustment of(Network network, int held) {
    int n = network.size();
    NormalEquations equations = new NormalEquations(network, held);
    double[] correction = equations.corrections();
    long[] position = new long[n];
    long[] spread = new long[n];
    for (int i = 0; i < n; i++) {
      position[i] = network.start(i) + Math.round(correction[i] * 1e6 / ROUND) * ROUND;
      spread[i] = Math.round(Math.sqrt(equations.variance(i)) * 1e6);
    }
    return new Adjustment(position, spread);
  }
}
