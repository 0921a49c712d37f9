package holloway.survey;

import java.util.ArrayList;
import java.util.List;

/**
 * What the adjustment does to one observation, and how much of an error in it would show. All of a
 * network's observations are taken as independent.
 *
 * @param v adjusted less observed value, millimetres
 * @param redundancy the share of a gross error of this observation that shows in {@code v}: 0 when
 *     nothing else checks it, near 1 when everything else is much better known (local redundancy
 *     number)
 */
record Residual(Observation observation, double v, double redundancy) {
  /** Below this share nothing checks the observation; what is left is rounding of doubles. */
  static final double CHECKED = 1e-6;

  /** Of every observation of a network, in the network's order. */
  static List<Residual> of(Network network, int held) {
    NormalEquations equations = new NormalEquations(network, held);
    double[] x = equations.corrections();
    List<Residual> out = new ArrayList<>();
    for (Observation o : network.observations()) {
      double v = x[o.to()] - x[o.from()] - network.gap(o) / 1e6;
      out.add(new Residual(o, v, 1 - equations.variance(o) / o.variance()));
    }
    return List.copyOf(out);
  }

  boolean isChecked() {
    return redundancy > CHECKED;
  }

  /**
   * The standardised residual: v over its own standard deviation, which is the observation's spread
   * times the root of its redundancy; 0 when nothing checks it.
   *
   * <p>Source: W. Baarda, A Testing Procedure for Use in Geodetic Networks, Netherlands Geodetic
   * Commission, Publications on Geodesy 2(5), Delft 1968 (the w-test).
   */
  double w() {
    return isChecked() ? v / Math.sqrt(observation.variance() * redundancy) : 0;
  }

  /** Best guess of the gross error in the observed value, millimetres: −v over the redundancy. */
  double error() {
    return isChecked() ? -v / redundancy : 0;
  }

  /** One standard deviation of {@link #error}, millimetres; it is |w| times smaller than that. */
  double errorSpread() {
    return isChecked() ? Math.sqrt(observation.variance() / redundancy) : 0;
  }
}
