package holloway.survey;

import java.util.ArrayList;
import java.util.List;

/**
 * The normal equations again, in exact fractions and by Gauss-Jordan elimination: slow, and sharing
 * no arithmetic with the adjustment.
 */
final class ExactNormals {
  private static final int HELD = 0;
  private final List<Observation> observations;
  private final Fraction[][] inverse;
  private final Fraction[] x;

  ExactNormals(Network network) {
    observations = network.observations();
    int n = network.size();
    Fraction[][] normal = zeros(n, 2 * n);
    Fraction[] right = zeros(1, n)[0];
    for (Observation o : observations) {
      Fraction weight = Fraction.ONE.dividedBy(variance(o));
      Fraction pull = weight.times(Fraction.of(o.value(), 1));
      add(normal, o.from(), o.from(), weight);
      add(normal, o.to(), o.to(), weight);
      add(normal, o.from(), o.to(), Fraction.ZERO.minus(weight));
      add(normal, o.to(), o.from(), Fraction.ZERO.minus(weight));
      right[o.to()] = right[o.to()].plus(pull);
      right[o.from()] = right[o.from()].minus(pull);
    }
    for (int i = 0; i < n; i++) {
      normal[i][HELD] = i == HELD ? Fraction.ONE : Fraction.ZERO;
      normal[HELD][i] = i == HELD ? Fraction.ONE : Fraction.ZERO;
      normal[i][n + i] = Fraction.ONE;
    }
    right[HELD] = Fraction.ZERO;
    reduce(normal, n);
    inverse = zeros(n, n);
    x = zeros(1, n)[0];
    for (int i = 0; i < n; i++) {
      for (int k = 0; k < n; k++) {
        inverse[i][k] = i == HELD || k == HELD ? Fraction.ZERO : normal[i][n + k];
        x[i] = x[i].plus(inverse[i][k].times(right[k]));
      }
    }
  }

  private static void reduce(Fraction[][] a, int n) {
    for (int i = 0; i < n; i++) {
      Fraction pivot = a[i][i];
      for (int k = 0; k < 2 * n; k++) {
        a[i][k] = a[i][k].dividedBy(pivot);
      }
      for (int j = 0; j < n; j++) {
        Fraction times = a[j][i];
        for (int k = 0; j != i && k < 2 * n; k++) {
          a[j][k] = a[j][k].minus(times.times(a[i][k]));
        }
      }
    }
  }

  private static Fraction[][] zeros(int rows, int columns) {
    Fraction[][] out = new Fraction[rows][columns];
    for (Fraction[] row : out) {
      java.util.Arrays.fill(row, Fraction.ZERO);
    }
    return out;
  }

  private static void add(Fraction[][] a, int i, int k, Fraction more) {
    a[i][k] = a[i][k].plus(more);
  }

  private static Fraction variance(Observation o) {
    return Fraction.of(o.spread(), 1).times(Fraction.of(o.spread(), 1));
  }

  /** Adjusted position in metres. */
  double position(int i) {
    return x[i].value() / 1e9;
  }

  /** Adjusted less observed values in millimetres, in the network's order. */
  List<Double> residuals() {
    List<Double> out = new ArrayList<>();
    for (Observation o : observations) {
      out.add(x[o.to()].minus(x[o.from()]).minus(Fraction.of(o.value(), 1)).value() / 1e6);
    }
    return out;
  }

  List<Double> redundancies() {
    List<Double> out = new ArrayList<>();
    for (Observation o : observations) {
      Fraction q =
          inverse[o.from()][o.from()]
              .plus(inverse[o.to()][o.to()])
              .minus(inverse[o.from()][o.to()])
              .minus(inverse[o.to()][o.from()]);
      out.add(Fraction.ONE.minus(q.dividedBy(variance(o))).value());
    }
    return out;
  }
}
