package holloway.survey;

import java.util.List;

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
    double[][] normal = new double[n][n];
    double[] right = new double[n];
    List<Observation> observations = network.observations();
    for (Observation o : observations) {
      double weight = 1 / o.variance();
      double pull = weight * (network.gap(o) / 1e6);
      normal[o.from()][o.from()] += weight;
      normal[o.to()][o.to()] += weight;
      normal[o.from()][o.to()] -= weight;
      normal[o.to()][o.from()] -= weight;
      right[o.to()] += pull;
      right[o.from()] -= pull;
    }
    for (int i = 0; i < n; i++) {
      normal[i][held] = 0;
      normal[held][i] = 0;
    }
    normal[held][held] = 1;
    right[held] = 0;
    Cholesky factor = new Cholesky(normal);
    double[] correction = factor.solve(right);
    long[] position = new long[n];
    long[] spread = new long[n];
    for (int i = 0; i < n; i++) {
      position[i] = network.start(i) + Math.round(correction[i] * 1e6 / ROUND) * ROUND;
      spread[i] = i == held ? 0 : Math.round(Math.sqrt(factor.inverseDiagonal(i)) * 1e6);
    }
    return new Adjustment(position, spread);
  }
}
