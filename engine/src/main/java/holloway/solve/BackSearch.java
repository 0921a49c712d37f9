package holloway.solve;

import java.util.Arrays;
import java.util.function.IntToLongFunction;

/** Distances to a set of targets, as far as a limit; what lies beyond counts as at the limit. */
final class BackSearch {
  private final Network net;
  private final long[] distance;
  private final int[] touched;
  private final NodeHeap heap;
  private int count;
  private long limit;
  private long looks;

  BackSearch(Network net) {
    this.net = net;
    distance = new long[net.nodes];
    Arrays.fill(distance, Network.SHUT);
    touched = new int[net.nodes];
    heap = new NodeHeap(distance);
  }

  /**
   * @param lengths price of walking an arc, {@link Network#SHUT} or more if it is closed
   */
  void run(int[] targets, long upTo, IntToLongFunction lengths) {
    for (int i = 0; i < count; i++) {
      distance[touched[i]] = Network.SHUT;
    }
    count = 0;
    looks = 0;
    limit = upTo;
    heap.clear();
    for (int t : targets) {
      reach(t, 0);
    }
    while (!heap.isEmpty()) {
      int v = heap.pop();
      looks += net.first[v + 1] - net.first[v];
      for (int i = net.first[v]; i < net.first[v + 1]; i++) {
        int arc = net.arcs[i] ^ 1;
        int u = net.tail(arc);
        if (distance[u] > distance[v]) {
          long d = distance[v] + lengths.applyAsLong(arc);
          if (d < limit && d < distance[u]) {
            reach(u, d);
          }
        }
      }
    }
  }

  private void reach(int v, long d) {
    if (distance[v] >= Network.SHUT) {
      touched[count++] = v;
    }
    distance[v] = d;
    heap.put(v);
  }

  /** At most the limit of the last run. */
  long distance(int node) {
    return Math.min(limit, distance[node]);
  }

  /** Arcs looked at in the last run. */
  long looks() {
    return looks;
  }

  /** How many nodes lie within the limit. */
  int reached() {
    return count;
  }

  int reachedAt(int i) {
    return touched[i];
  }
}
