package holloway.survey;

/**
 * Factor of a small dense symmetric positive definite matrix. Published source: A.-L. Cholesky's
 * method as in any text on numerical linear algebra; here row by row, so the order of operations,
 * and with it every bit of the result, is fixed.
 */
final class Cholesky {
  private final double[][] l;

  Cholesky(double[][] a) {
    int n = a.length;
    l = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) {
        double sum = a[i][j];
        for (int k = 0; k < j; k++) {
          sum -= l[i][k] * l[j][k];
        }
        if (i == j && sum <= 0) {
          throw new IllegalArgumentException("not positive definite at row " + i);
        }
        l[i][j] = i == j ? Math.sqrt(sum) : sum / l[j][j];
      }
    }
  }

  /** x with A x = b. */
  double[] solve(double[] b) {
    int n = l.length;
    double[] x = b.clone();
    for (int i = 0; i < n; i++) {
      for (int k = 0; k < i; k++) {
        x[i] -= l[i][k] * x[k];
      }
      x[i] /= l[i][i];
    }
    for (int i = n - 1; i >= 0; i--) {
      for (int k = i + 1; k < n; k++) {
        x[i] -= l[k][i] * x[k];
      }
      x[i] /= l[i][i];
    }
    return x;
  }

  /** Entry (i, i) of the inverse: the variance of unknown i when A holds the weights. */
  double inverseDiagonal(int i) {
    double[] unit = new double[l.length];
    unit[i] = 1;
    return solve(unit)[i];
  }
}
