package holloway.survey;

import holloway.units.Length;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.TreeMap;

/**
 * Loops of observations that do not close. For every observation the tightest loop through it (the
 * one whose other observations have the least variance) is walked once; a surveyor's traverse, in
 * one dimension. A loop is out when it misses by more than three times the root of the sum of its
 * squared spreads (errors of position add so: the law of propagation of independent errors).
 */
final class Loops {
  private static final double LIMIT = 3;

  private final Network network;
  private final List<Observation> observations;
  private final List<List<Integer>> at = new ArrayList<>();

  private Loops(Network network) {
    this.network = network;
    this.observations = network.observations();
    for (int i = 0; i < network.size(); i++) {
      at.add(new ArrayList<>());
    }
    for (int k = 0; k < observations.size(); k++) {
      at.get(observations.get(k).from()).add(k);
      at.get(observations.get(k).to()).add(k);
    }
  }

  static List<Misclosure> misclosures(Network network) {
    Loops loops = new Loops(network);
    TreeMap<List<Integer>, Misclosure> found =
        new TreeMap<>(Comparator.comparing(Object::toString));
    for (int k = 0; k < loops.observations.size(); k++) {
      List<Integer> loop = loops.tightest(k);
      List<Integer> key = loop.stream().sorted().toList();
      if (!loop.isEmpty() && !found.containsKey(key)) {
        loops.check(loop).ifPresent(m -> found.put(key, m));
      }
    }
    return found.values().stream()
        .sorted(
            Comparator.comparing(Misclosure::size)
                .reversed()
                .thenComparing(m -> m.measurements().toString()))
        .toList();
  }

  /**
   * Observation k and then the others of its tightest loop, in order; empty when it closes none.
   */
  private List<Integer> tightest(int k) {
    Observation closing = observations.get(k);
    double[] far = new double[network.size()];
    int[] via = new int[network.size()];
    Arrays.fill(far, Double.POSITIVE_INFINITY);
    Arrays.fill(via, -1);
    far[closing.to()] = 0;
    record Reached(double far, int node) {}
    PriorityQueue<Reached> queue =
        new PriorityQueue<>(
            Comparator.comparingDouble(Reached::far).thenComparingInt(Reached::node));
    queue.add(new Reached(0, closing.to()));
    while (!queue.isEmpty()) {
      Reached r = queue.remove();
      if (r.far > far[r.node]) {
        continue;
      }
      for (int e : at.get(r.node)) {
        int next = other(e, r.node);
        double reach = r.far + observations.get(e).variance();
        if (e != k && reach < far[next]) {
          far[next] = reach;
          via[next] = e;
          queue.add(new Reached(reach, next));
        }
      }
    }
    return via[closing.from()] < 0 ? List.of() : walkBack(k, via);
  }

  private List<Integer> walkBack(int k, int[] via) {
    Deque<Integer> path = new ArrayDeque<>();
    int node = observations.get(k).from();
    while (node != observations.get(k).to()) {
      path.addFirst(via[node]);
      node = other(via[node], node);
    }
    path.addFirst(k);
    return List.copyOf(path);
  }

  private int other(int e, int node) {
    Observation o = observations.get(e);
    return o.from() == node ? o.to() : o.from();
  }

  private Optional<Misclosure> check(List<Integer> loop) {
    int node = observations.get(loop.get(0)).from();
    long sum = 0;
    double variance = 0;
    List<String> texts = new ArrayList<>();
    for (int e : loop) {
      Observation o = observations.get(e);
      sum += o.from() == node ? o.value() : -o.value();
      variance += o.variance();
      texts.add(o.text());
      node = other(e, node);
    }
    long tolerance = Math.round(LIMIT * Math.sqrt(variance) * 1e6);
    if (Math.abs(sum) <= tolerance) {
      return Optional.empty();
    }
    String where =
        network.axis().word() + " through " + network.name(observations.get(loop.get(0)).from());
    return Optional.of(
        new Misclosure(where, new Length(Math.abs(sum)), new Length(tolerance), texts));
  }
}
