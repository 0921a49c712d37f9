package holloway.support;

import holloway.routing.RouteGraph;
import java.util.Arrays;
import java.util.Comparator;
import java.util.PriorityQueue;
import java.util.Set;

/**
 * The least that is still to be paid from a node to the target, for every set of zones that are set
 * up already. Counts edges, what is paid where it is met, and works of a single node when that node
 * is entered; every other shared work counts nothing. So it never says too much for a route that
 * enters nodes it has not entered, save for works of such nodes that are open before.
 */
final class RemainingPrice {
  private static final int MOST_ZONES = 5;

  private final SingleRunNet net;
  private final long[][] least;

  RemainingPrice(SingleRunNet net, Set<Integer> targets) {
    this.net = net;
    int sets = 1 << zones();
    least = new long[sets][];
    for (int mask = sets - 1; mask >= 0; mask--) {
      least[mask] = toTargets(targets, mask);
      for (int z = 0; z < zones(); z++) {
        if ((mask >> z & 1) == 0) {
          long[] more = least[mask | 1 << z];
          for (int v = 0; v < more.length; v++) {
            least[mask][v] = Math.min(least[mask][v], more[v] + net.price[net.zones[z]]);
          }
        }
      }
    }
  }

  private int zones() {
    return Math.min(MOST_ZONES, net.zones.length);
  }

  /** At least {@link SingleRunNet#NONE} where the target cannot be reached. */
  long from(int node, int[] open) {
    int mask = 0;
    for (int z = 0; z < zones(); z++) {
      mask |= WorkSets.has(open, net.zones[z]) ? 1 << z : 0;
    }
    return least[mask][node];
  }

  private record Reached(int node, long price) {}

  /** Backwards from the targets; zones outside the set are shut. */
  private long[] toTargets(Set<Integer> targets, int mask) {
    long[] out = new long[net.at.size()];
    Arrays.fill(out, SingleRunNet.NONE);
    PriorityQueue<Reached> queue =
        new PriorityQueue<>(
            Comparator.comparingLong(Reached::price).thenComparingInt(Reached::node));
    for (int t : targets) {
      out[t] = 0;
      queue.add(new Reached(t, 0));
    }
    while (!queue.isEmpty()) {
      Reached r = queue.remove();
      if (r.price() == out[r.node()]) {
        long entered = r.price() + net.ownOf(r.node()) + counted(net.worksOf(r.node()), mask, true);
        for (RouteGraph.Edge e : net.at.get(r.node())) {
          long sum = entered + edge(e, mask);
          int before = e.other(r.node());
          if (sum < out[before]) {
            out[before] = sum;
            queue.add(new Reached(before, sum));
          }
        }
      }
    }
    return out;
  }

  private long edge(RouteGraph.Edge e, int mask) {
    long best = SingleRunNet.NONE;
    for (SingleRunNet.Option o : net.options(e)) {
      best = Math.min(best, o.own() + counted(o.shared(), mask, false));
    }
    return best;
  }

  private long counted(int[] works, int mask, boolean atNode) {
    long sum = 0;
    for (int w : works) {
      int z = zone(w);
      if (z >= 0) {
        sum += (mask >> z & 1) == 1 ? 0 : SingleRunNet.NONE;
      } else if (atNode && net.nodeOf(w) >= 0 || net.price[w] >= SingleRunNet.NONE) {
        sum += net.price[w];
      }
    }
    return Math.min(sum, SingleRunNet.NONE);
  }

  private int zone(int work) {
    for (int z = 0; z < zones(); z++) {
      if (net.zones[z] == work) {
        return z;
      }
    }
    return -1;
  }

  /** Whether this work was counted for the node it belongs to. */
  boolean counts(int work) {
    return net.nodeOf(work) >= 0 && zone(work) < 0;
  }
}
