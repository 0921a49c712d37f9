package holloway.survey;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.PriorityQueue;
import java.util.function.Predicate;

/** Ways through a network from one position to another, the best measured first. */
final class Paths {
  private final Network network;
  private final List<Observation> observations;
  private final List<List<Integer>> at = new ArrayList<>();

  Paths(Network network) {
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

  List<Observation> observations() {
    return observations;
  }

  private record Reached(double far, int node) {}

  /**
   * The observations of the way with the least variance, in order; empty when there is none.
   *
   * @param usable by index
   */
  List<Integer> tightest(int from, int to, Predicate<Integer> usable) {
    double[] far = new double[network.size()];
    int[] via = new int[network.size()];
    Arrays.fill(far, Double.POSITIVE_INFINITY);
    Arrays.fill(via, -1);
    far[from] = 0;
    PriorityQueue<Reached> queue =
        new PriorityQueue<>(
            Comparator.comparingDouble(Reached::far).thenComparingInt(Reached::node));
    queue.add(new Reached(0, from));
    while (!queue.isEmpty()) {
      Reached r = queue.remove();
      if (r.far > far[r.node]) {
        continue;
      }
      for (int e : at.get(r.node)) {
        int next = other(e, r.node);
        double reach = r.far + observations.get(e).variance();
        if (usable.test(e) && reach < far[next]) {
          far[next] = reach;
          via[next] = e;
          queue.add(new Reached(reach, next));
        }
      }
    }
    return via[to] < 0 ? List.of() : walkBack(from, to, via);
  }

  private List<Integer> walkBack(int from, int to, int[] via) {
    Deque<Integer> path = new ArrayDeque<>();
    int node = to;
    while (node != from) {
      path.addFirst(via[node]);
      node = other(via[node], node);
    }
    return List.copyOf(path);
  }

  private int other(int e, int node) {
    Observation o = observations.get(e);
    return o.from() == node ? o.to() : o.from();
  }

  /** The observations of a way as signed steps with their running sum. */
  List<Step> steps(int from, List<Integer> way) {
    List<Step> out = new ArrayList<>();
    int node = from;
    long sum = 0;
    for (int e : way) {
      Observation o = observations.get(e);
      long value = o.from() == node ? o.value() : -o.value();
      sum += value;
      out.add(Step.of(o, value, sum));
      node = other(e, node);
    }
    return List.copyOf(out);
  }
}
