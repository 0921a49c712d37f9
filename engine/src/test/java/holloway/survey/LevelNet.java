package holloway.survey;

import holloway.house.Where;
import java.util.Map;
import java.util.TreeMap;

/**
 * A levelling net: the one-dimensional network of a textbook, whose heights behave exactly as the
 * positions of faces along one axis. Lengths in metres, spreads in millimetres; benchmarks hang on
 * a datum at height zero.
 */
final class LevelNet {
  static final int DATUM = 0;
  final Network network = new Network(Axis.Z);
  private final Map<String, Integer> points = new TreeMap<>();
  private final Map<String, Double> benchmarks = new TreeMap<>();

  LevelNet() {
    network.addUnknown("datum");
  }

  LevelNet benchmark(String name, double height) {
    benchmarks.put(name, height);
    return this;
  }

  LevelNet line(String from, String to, double rise, double spread) {
    double more = benchmarks.getOrDefault(from, 0.0) - benchmarks.getOrDefault(to, 0.0);
    network.observe(
        point(from),
        point(to),
        Math.round((rise + more) * 1e9),
        Math.round(spread * 1e6),
        Label.taped(from + " to " + to, Where.NOWHERE));
    return this;
  }

  private int point(String name) {
    return benchmarks.containsKey(name) ? DATUM : points.computeIfAbsent(name, network::addUnknown);
  }

  /** Adjusted height in metres. */
  double height(String name) {
    return Adjustment.of(network, DATUM).position()[points.get(name)] / 1e9;
  }

  /** Spread of the adjusted height from the stated spreads alone, millimetres. */
  double spread(String name) {
    return Adjustment.of(network, DATUM).spread()[points.get(name)] / 1e6;
  }

  Residual residual(String line) {
    return Residual.of(network, DATUM).stream()
        .filter(r -> r.observation().text().equals(line))
        .findFirst()
        .orElseThrow();
  }

  /** Sum of the squared residuals over squared spreads. */
  double weightedSquares() {
    return Residual.of(network, DATUM).stream()
        .mapToDouble(r -> r.v() * r.v() / r.observation().variance())
        .sum();
  }
}
