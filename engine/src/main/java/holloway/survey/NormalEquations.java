package holloway.survey;

/**
 * The normal equations of one network with one unknown held, factored once. Corrections to the
 * start values are in millimetres, cofactors in square millimetres.
 */
final class NormalEquations {
  private final Network network;
  private final int held;
  private final Cholesky factor;
  private final double[] right;

  NormalEquations(Network network, int held) {
    this.network = network;
    this.held = held;
    int n = network.size();
    double[][] normal = new double[n][n];
    right = new double[n];
    for (Observation o : network.observations()) {
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
    factor = new Cholesky(normal);
  }

  double[] corrections() {
    return factor.solve(right);
  }

  /** Variance of the adjusted position of unknown {@code i} against the held one. */
  double variance(int i) {
    return i == held ? 0 : factor.inverseDiagonal(i);
  }

  /** Variance of the adjusted value of an observation. */
  double variance(Observation o) {
    double[] difference = new double[network.size()];
    difference[o.to()] += 1;
    difference[o.from()] -= 1;
    difference[held] = 0;
    double[] q = factor.solve(difference);
    return q[o.to()] * difference[o.to()] + q[o.from()] * difference[o.from()];
  }
}
