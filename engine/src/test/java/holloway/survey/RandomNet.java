package holloway.survey;

import holloway.house.Where;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** A connected random net of 3 to 6 points with at most 8 observations, at least one to spare. */
record RandomNet(int points, List<Observation> observations) {

  /** True heights plus {@code noise} times a normal error of each observation's own spread. */
  static RandomNet of(long seed, double noise) {
    Random random = new Random(seed);
    int points = 3 + random.nextInt(4);
    int count = points + random.nextInt(8 - points + 1);
    long[] height = random.longs(points, 0, 20_000_000_000L).toArray();
    List<Observation> out = new ArrayList<>();
    for (int k = 0; k < count; k++) {
      int to = k + 1 < points ? k + 1 : random.nextInt(points);
      int from = random.nextInt(k + 1 < points ? to : points);
      while (from == to) {
        from = random.nextInt(points);
      }
      long spread = 1_000_000L * (1 + random.nextInt(12));
      long error = Math.round(noise * random.nextGaussian() * spread);
      out.add(observation(from, to, height[to] - height[from] + error, spread, k));
    }
    return new RandomNet(points, out);
  }

  private static Observation observation(int from, int to, long value, long spread, int k) {
    return new Observation(from, to, value, spread, Label.taped("line " + k, Where.NOWHERE));
  }

  /** The k-th observation read {@code more} nanometres too much. */
  RandomNet planted(int k, long more) {
    List<Observation> changed = new ArrayList<>(observations);
    Observation o = changed.get(k);
    changed.set(k, observation(o.from(), o.to(), o.value() + more, o.spread(), k));
    return new RandomNet(points, changed);
  }

  Network network() {
    return network(observations, 0);
  }

  /** In another order, and with start values that lie elsewhere. */
  Network shuffled(long seed) {
    List<Observation> other = new ArrayList<>(observations);
    Collections.shuffle(other, new Random(seed));
    return network(other, seed % 1000 * 1_000_000L);
  }

  private Network network(List<Observation> in, long shift) {
    Network network = new Network(Axis.X);
    for (int i = 0; i < points; i++) {
      network.start(network.addUnknown("p" + i), shift);
    }
    in.forEach(o -> network.observe(o.from(), o.to(), o.value(), o.spread(), o.label()));
    return network;
  }
}
