package holloway.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Published adjustments of levelling nets, and every one of them again in exact fractions.
 *
 * <p>The numbers were read in copies and reprints, not in the books themselves; each source says
 * which.
 */
class PublishedNetsTest {
  /**
   * C. D. Ghilani and P. R. Wolf, Adjustment Computations, 4th ed., Wiley 2006, example 12.1 (in
   * later editions 12.6), also F. Krumm, Geodetic Network Adjustment Examples, rev. 3.5, Stuttgart
   * 2020, example 2.1; read in two reprints. A is held at 437.596 m.
   */
  static LevelNet ghilani() {
    return new LevelNet()
        .benchmark("A", 437.596)
        .line("A", "B", 10.509, 6)
        .line("B", "C", 5.360, 4)
        .line("C", "D", -8.523, 5)
        .line("D", "A", -7.348, 3)
        .line("B", "D", -3.167, 4)
        .line("A", "C", 15.881, 12);
  }

  /** Heights to 0.01 mm and residuals to 0.01 mm as Krumm prints them. */
  @Test
  void ghilaniAndWolfExample12Point1() {
    LevelNet net = ghilani();
    assertEquals(448.10871, net.height("B"), 0.5e-5);
    assertEquals(453.46847, net.height("C"), 0.5e-5);
    assertEquals(444.94361, net.height("D"), 0.5e-5);
    assertEquals(3.71, net.residual("A to B").v(), 0.005);
    assertEquals(-8.53, net.residual("A to C").v(), 0.005);
    assertEquals(-0.24, net.residual("B to C").v(), 0.005);
    assertEquals(1.89, net.residual("B to D").v(), 0.005);
    assertEquals(-1.86, net.residual("C to D").v(), 0.005);
    assertEquals(0.39, net.residual("D to A").v(), 0.005);
    assertEquals(1.27212, net.weightedSquares(), 0.5e-5);
  }

  /** The same source: spreads of the heights, scaled by s0 = root(1.27212 / 3) = 0.6512. */
  @Test
  void ghilaniAndWolfSpreadsOfTheHeights() {
    LevelNet net = ghilani();
    assertEquals(2.30, 0.6512 * net.spread("B"), 0.005);
    assertEquals(2.64, 0.6512 * net.spread("C"), 0.005);
    assertEquals(1.76, 0.6512 * net.spread("D"), 0.005);
  }

  /**
   * "Sample 1D vertical least square adjustment", a published run of gama-local 1.5.09 (Czech
   * Technical University): four legs levelled forward and back, 5 mm a leg, 1a held at 1000 m. By
   * hand: the means of the legs miss by 12.5 mm, so each leg gives 3.125 mm.
   */
  static LevelNet forwardAndBack() {
    return new LevelNet()
        .benchmark("1a", 1000)
        .line("1a", "4", -1.225, 5)
        .line("4", "3", -0.848, 5)
        .line("3", "2", 1.342, 5)
        .line("2", "1a", 0.720, 5)
        .line("1a", "2", -0.724, 5)
        .line("2", "3", -1.335, 5)
        .line("3", "4", 0.842, 5)
        .line("4", "1a", 1.231, 5);
  }

  /** Printed: heights to 0.01 mm, [pvv] 146.625 mm^2, spread 3.1 mm, largest w 1.68 in line 6. */
  @Test
  void sampleOfLegsForwardAndBack() {
    LevelNet net = forwardAndBack();
    assertEquals(998.77513, net.height("4"), 0.6e-5);
    assertEquals(997.93325, net.height("3"), 0.6e-5);
    assertEquals(999.27487, net.height("2"), 0.6e-5);
    assertEquals(146.625, 25 * net.weightedSquares(), 0.0005);
    assertEquals(3.1, net.spread("4"), 0.05);
    assertEquals(3.5, net.spread("3"), 0.05);
    double most =
        Residual.of(net.network, LevelNet.DATUM).stream()
            .mapToDouble(r -> Math.abs(r.w()))
            .max()
            .orElseThrow();
    assertEquals(1.68, most, 0.005);
    assertEquals(most, Math.abs(net.residual("2 to 3").w()), 1e-12);
  }

  /**
   * G. Strang and K. Borre, Linear Algebra, Geodesy, and GPS, Wellesley-Cambridge 1997, chapter 8:
   * three benchmarks, two new points. Lengths and the sum of squares as surveyors published them
   * when they adjusted it again in an open discussion of 2019 (6 mm a root kilometre).
   */
  static LevelNet strangAndBorre() {
    return new LevelNet()
        .benchmark("A", 10.021)
        .benchmark("B", 10.321)
        .benchmark("C", 11.002)
        .line("A", "E", 0.732, 6 * Math.sqrt(0.970))
        .line("A", "F", 1.978, 6 * Math.sqrt(1.002))
        .line("B", "E", 0.420, 6 * Math.sqrt(1.070))
        .line("C", "F", 0.988, 6 * Math.sqrt(1.110))
        .line("E", "F", 1.258, 6 * Math.sqrt(0.890));
  }

  /** Printed: three observations to spare, sum of the squared standardised residuals 4.636. */
  @Test
  void strangAndBorreLevellingNet() {
    assertEquals(4.636, strangAndBorre().weightedSquares(), 0.0005);
  }

  /**
   * Z. Siki, Level network adjustment and data snooping, teaching notes of the Budapest University
   * of Technology and Economics, 2012-2014 (published by its OSGeo lab): six lines between four
   * points, the spread 0.7 mm a kilometre times the length.
   */
  static LevelNet siki() {
    return new LevelNet()
        .benchmark("4", 101.345)
        .line("1", "2", -0.749, 0.7 * 1.1)
        .line("1", "3", -1.274, 0.7 * 1.8)
        .line("1", "4", -2.890, 0.7 * 1.4)
        .line("2", "3", -0.530, 0.7 * 1.5)
        .line("2", "4", -2.141, 0.7 * 1.9)
        .line("3", "4", -1.614, 0.7 * 0.9);
  }

  @Test
  void sikiHeightsAndResiduals() {
    LevelNet net = siki();
    assertEquals(104.2350, net.height("1"), 0.5e-4);
    assertEquals(103.4868, net.height("2"), 0.5e-4);
    assertEquals(102.9588, net.height("3"), 0.5e-4);
    double[] v = {0.81, -2.18, 0.00, 2.01, -0.81, 0.18};
    String[] lines = {"1 to 2", "1 to 3", "1 to 4", "2 to 3", "2 to 4", "3 to 4"};
    for (int i = 0; i < v.length; i++) {
      assertEquals(v[i], net.residual(lines[i]).v(), 0.005, lines[i]);
    }
    assertEquals(8.217, net.weightedSquares(), 0.0005);
  }

  /** His columns U (normal distribution: the w-test without its sign) and r, one decimal each. */
  @Test
  void sikiStandardisedResidualsAndRedundancyNumbers() {
    LevelNet net = siki();
    String[] lines = {"1 to 2", "1 to 3", "1 to 4", "2 to 3", "2 to 4", "3 to 4"};
    double[] u = {1.9, 2.1, 0.0, 2.6, 0.7, 0.6};
    double[] r = {0.3, 0.7, 0.5, 0.5, 0.7, 0.2};
    for (int i = 0; i < u.length; i++) {
      assertEquals(u[i], Math.abs(net.residual(lines[i]).w()), 0.05, lines[i]);
      assertEquals(r[i], net.residual(lines[i]).redundancy(), 0.05, lines[i]);
    }
  }

  @Test
  void allOfThemInExactFractions() {
    for (LevelNet net : List.of(ghilani(), forwardAndBack(), siki(), strangAndBorre())) {
      ExactNormals exact = new ExactNormals(net.network);
      List<Residual> ours = Residual.of(net.network, LevelNet.DATUM);
      Adjustment adjusted = Adjustment.of(net.network, LevelNet.DATUM);
      double sum = 0;
      for (int i = 1; i < net.network.size(); i++) {
        assertEquals(exact.position(i), adjusted.position()[i] / 1e9, 1e-6);
      }
      for (int k = 0; k < ours.size(); k++) {
        assertEquals(exact.residuals().get(k), ours.get(k).v(), 1e-6, ours.get(k).toString());
        assertEquals(exact.redundancies().get(k), ours.get(k).redundancy(), 1e-9);
        sum += ours.get(k).redundancy();
      }
      // the redundancy numbers add up to observations less unknowns (Baarda 1968)
      assertEquals(ours.size() - (net.network.size() - 1), sum, 1e-9);
      assertTrue(sum > 0);
    }
  }
}
