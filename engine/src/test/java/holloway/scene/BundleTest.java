package holloway.scene;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Cables of a bundle lie beside each other, in no more room than the hole that they may share. */
class BundleTest {
  /** Of a hole's section, as far as cables may fill it. */
  private static double share(int n) {
    return n == 1 ? 0.53 : n == 2 ? 0.31 : 0.40;
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 15, 19, 20, 24, 37, 46})
  void noneLiesOnAnotherAndAllFitTheHole(int n) {
    double hole = Math.sqrt(n / share(n));
    for (int a = 0; a < n; a++) {
      double[] p = Bundle.place(a, n);
      double reach = Math.hypot(p[0], p[1]) + 0.5;
      assertTrue(2 * reach <= hole + 1e-9, a + " of " + n + ": " + 2 * reach + " in " + hole);
      for (int b = 0; b < a; b++) {
        double[] q = Bundle.place(b, n);
        double apart = Math.hypot(p[0] - q[0], p[1] - q[1]);
        assertTrue(apart >= 1 - 1e-9, a + " and " + b + " of " + n + " are " + apart + " apart");
      }
    }
  }
}
